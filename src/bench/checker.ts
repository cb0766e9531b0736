import { atom, type ReadableAtom } from 'nanostores';
import type { OwnFiles } from '../../shared/bench/index.ts';
import type { PrintedVisit } from '../printing/print-view.ts';
import { awaited } from './awaited.ts';
import { oneAtATime } from './one-at-a-time.ts';
import type {
  Answer,
  Ask,
  CheckAsk,
  Checked,
  DayAsk,
  DayMade,
  DraftAsk,
  Drafted,
  FindsAsk,
  FindsRead,
  Opened,
  PackPart,
  PapersAsk,
} from './protocol.ts';

/** The page's side of its worker. */
export interface Checker {
  /** Null until the library has been read. */
  readonly $opened: ReadableAtom<Opened | null>;
  /** The newest answer; null before the first. */
  readonly $checked: ReadableAtom<Checked | null>;
  /** Why nothing can be checked; null where all is well. */
  readonly $failed: ReadableAtom<string | null>;
  /** Reads the library, with the lead's own files laid over it. */
  readonly open: (own: OwnFiles) => void;
  /** Checks a text. Asked again before the answer is there, only the newest is checked next. */
  readonly check: (ask: Omit<CheckAsk, 'ask' | 'number'>) => void;
  /** The lesson's own page, for all its bands; null where an error stands in the way. */
  readonly page: (ask: Omit<CheckAsk, 'ask' | 'number' | 'page'>) => Promise<PackPart | null>;
  /** The newest reading of a finds list; null before the first. */
  readonly $finds: ReadableAtom<FindsRead | null>;
  /** Reads a list; what it gives is the number that the answer will carry. Of several, only the newest is read next. */
  readonly readFinds: (ask: Omit<FindsAsk, 'ask' | 'number'>) => number;
  /** The files of a site of the content; null where there is none of that name. */
  readonly site: (site: string) => Promise<OwnFiles | null>;
  /** All papers of a visit; null where an error stands in the way. */
  readonly papers: (ask: Omit<PapersAsk, 'ask' | 'number'>) => Promise<PrintedVisit | null>;
  readonly draft: (ask: Omit<DraftAsk, 'ask' | 'number'>) => Promise<Drafted>;
  /** A day file made from a visit; null where an error stands in the way. */
  readonly day: (ask: Omit<DayAsk, 'ask' | 'number'>) => Promise<DayMade['made']>;
}

/** @param content Where the site's content is. */
export function createChecker(content: string): Checker {
  const $opened = atom<Opened | null>(null);
  const $checked = atom<Checked | null>(null);
  const $failed = atom<string | null>(null);
  const worker = new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' });
  let number = 0;
  let lastFinds = 0;
  const $finds = atom<FindsRead | null>(null);
  const sites = awaited<OwnFiles | null>();
  const papers = awaited<PrintedVisit | null>();
  const drafts = awaited<Drafted>();
  const days = awaited<DayMade['made']>();
  const pages = awaited<PackPart | null>();

  const post = (ask: Ask): void => {
    // A worker is no window: it has no origin to name.
    // oxlint-disable-next-line unicorn/require-post-message-target-origin
    worker.postMessage(ask);
  };
  const checks = oneAtATime<CheckAsk>(post);
  const readings = oneAtATime<FindsAsk>(post);
  worker.addEventListener('message', ({ data }: MessageEvent<Answer>) => {
    if (data.answer === 'opened') $opened.set(data);
    else if (data.answer === 'failed') $failed.set(data.because);
    else if (data.answer === 'finds-in') {
      if (data.number === lastFinds) $finds.set(data);
    } else if (data.answer === 'site') sites.answered(data.number, data.site);
    else if (data.answer === 'drafted') drafts.answered(data.number, data);
    else if (data.answer === 'day') days.answered(data.number, data.made);
    else if (data.answer === 'papers') papers.answered(data.number, data.visit);
    else if (!pages.answered(data.number, data.page)) $checked.set(data);
    if (data.answer === 'checked' || data.answer === 'failed') checks.answered();
    if (data.answer === 'finds-in' || data.answer === 'failed') readings.answered();
  });
  worker.addEventListener('error', ({ message }) => {
    $failed.set(message === '' ? content : message);
  });

  return {
    $opened,
    $checked,
    $failed,
    open: (own) => {
      post({ ask: 'open', content, own });
    },
    check: (wanted) => {
      number += 1;
      checks.ask({ ask: 'check', number, ...wanted });
    },
    page: (wanted) => {
      number += 1;
      post({ ask: 'check', number, ...wanted, page: { band: null } });
      return pages.wait(number);
    },
    $finds,
    readFinds: (wanted) => {
      number += 1;
      lastFinds = number;
      readings.ask({ ask: 'finds-in', number, ...wanted });
      return number;
    },
    site: (site) => {
      number += 1;
      post({ ask: 'site', number, site });
      return sites.wait(number);
    },
    papers: ({ name, text, files }) => {
      number += 1;
      post({ ask: 'papers', number, name, text, files });
      return papers.wait(number);
    },
    draft: (wanted) => {
      number += 1;
      post({ ask: 'draft', number, ...wanted });
      return drafts.wait(number);
    },
    day: (wanted) => {
      number += 1;
      post({ ask: 'day', number, ...wanted });
      return days.wait(number);
    },
  };
}
