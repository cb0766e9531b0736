import { atom, type ReadableAtom } from 'nanostores';
import { benchPapers as words } from '../../shared/words/en/bench-papers.ts';
import { say } from '../../shared/words/index.ts';
import type { PaperSize, PrintAnswer, PrintAsk, PrintChoices, PrintedVisit } from '../printing/print-view.ts';
import type { PapersAsk } from './protocol.ts';

/** The visit as it is written, to make papers from. */
export type VisitText = Omit<PapersAsk, 'ask' | 'number'>;

/** How many sheets each paper takes, and of which text laid out how that is true. */
export interface Counted extends PrintChoices {
  readonly text: string;
  readonly sheets: ReadonlyMap<string, number>;
}

/** What the lead does with the papers of a visit: looked at, counted, printed. */
export interface PapersDesk {
  readonly $choices: ReadableAtom<PrintChoices>;
  /** What the frame of the papers is to do; null before the first press. */
  readonly $ask: ReadableAtom<PrintAsk | null>;
  /** The paper looked at, by path; null where none is. */
  readonly $seen: ReadableAtom<string | null>;
  readonly $counted: ReadableAtom<Counted | null>;
  readonly $told: ReadableAtom<string>;
  readonly choose: (part: Partial<PrintChoices>) => void;
  /** The visit as it stands. @param isSound It was checked as it is, and nothing stops it. */
  readonly take: (visit: VisitText, isSound: boolean) => void;
  readonly look: (path: string) => void;
  readonly putAway: () => void;
  /** Prints one paper, or all of them with their contents where none is named. */
  readonly print: (path: string | null) => void;
  readonly count: () => void;
  readonly answered: (answer: PrintAnswer) => void;
  readonly failed: (because: string) => void;
}

/**
 * The desk of a visit's papers. Only the newest press counts: what was asked before it is let go.
 *
 * @param make Makes all papers of a text; null where an error stands in the way.
 */
export function createPapersDesk(
  make: (visit: VisitText) => Promise<PrintedVisit | null>,
  size: PaperSize,
): PapersDesk {
  const $choices = atom<PrintChoices>({ size, isLarge: false, hasBacks: false });
  const $ask = atom<PrintAsk | null>(null);
  const $seen = atom<string | null>(null);
  const $counted = atom<Counted | null>(null);
  const $told = atom('');
  let current: VisitText | null = null;
  let isSound = false;
  let number = 0;
  /** Something is being printed or counted: what is looked at waits until that is over. */
  let isBusy = false;
  let asked: { readonly ask: PrintAsk; readonly text: string } | null = null;

  const failed = (because: string): void => {
    isBusy = false;
    $told.set(say(words.failed, { because }));
  };
  const namesOf = ({ visit, paths }: PrintAsk): string =>
    paths.length === 1
      ? (visit.papers.find(({ paper }) => paper.path === paths[0])?.paper.name ?? '')
      : visit.together;
  const start = async (act: PrintAsk['act'], path: string | null): Promise<void> => {
    if (current === null) return;
    number += 1;
    isBusy = act !== 'look';
    const mine = number;
    const { text } = current;
    const visit = await make(current);
    if (mine !== number) return;
    if (visit === null) {
      isBusy = false;
      $told.set(words.not);
      return;
    }
    const all = visit.papers.map(({ paper }) => paper.path);
    const ask: PrintAsk = {
      ...$choices.get(),
      number,
      act,
      visit,
      paths: path === null ? all : all.filter((each) => each === path),
    };
    asked = { ask, text };
    if (act === 'print') $told.set(say(words.printing, { name: namesOf(ask) }));
    $ask.set(ask);
  };
  const begin = (act: PrintAsk['act'], path: string | null): void => {
    start(act, path).catch((error: unknown) =>
      failed(error instanceof Error ? error.message : String(error)),
    );
  };
  const lookAgain = (): void => {
    const path = $seen.get();
    if (path !== null && !isBusy) begin('look', path);
  };

  return {
    $choices,
    $ask,
    $seen,
    $counted,
    $told,
    choose: (part) => {
      $choices.set({ ...$choices.get(), ...part });
      lookAgain();
    },
    take: (visit, sound) => {
      current = visit;
      isSound = sound;
      if (sound) lookAgain();
    },
    look: (path) => {
      if (!isSound) {
        $told.set(words.not);
        return;
      }
      $seen.set(path);
      begin('look', path);
    },
    putAway: () => {
      $seen.set(null);
    },
    print: (path) => {
      begin('print', path);
    },
    count: () => {
      $told.set(words.counting);
      begin('count', null);
    },
    answered: (answer) => {
      if (asked === null || asked.ask.number !== answer.number) return;
      const { ask, text } = asked;
      if (answer.answer === 'counted') {
        const sheets = new Map(answer.sheets.map(({ path, sheets: count }) => [path, count]));
        const { size: paper, isLarge, hasBacks } = ask;
        $counted.set({ text, size: paper, isLarge, hasBacks, sheets });
        const sum = [...sheets.values()].reduce((total, count) => total + count, 0);
        $told.set(say(isLarge ? words.countedLarge : words.counted, { size: paper, sheets: sum }));
      }
      // A press since then is not over yet.
      if (answer.number !== number) return;
      isBusy = false;
      if (answer.answer === 'printed') $told.set(say(words.printed, { name: namesOf(ask) }));
      // What was looked at comes back into the frame.
      if (answer.answer !== 'shown') lookAgain();
    },
    failed,
  };
}
