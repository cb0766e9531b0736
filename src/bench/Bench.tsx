import { useStore } from '@nanostores/preact';
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import {
  carryPhotos,
  NO_FILES,
  outline,
  takeBack,
  takeIn,
  type Outline,
  type OwnFiles,
} from '../../shared/bench/index.ts';
import { bench as words } from '../../shared/words/en/bench.ts';
import { benchCarry } from '../../shared/words/en/bench-carry.ts';
import type { StepId } from '../../shared/words/en/bench-help.ts';
import { say } from '../../shared/words/index.ts';
import { slug } from '../../shared/library/slug.ts';
import { createBench } from '../stores/bench.ts';
import { BeginVisit } from './BeginVisit.tsx';
import { createChecker } from './checker.ts';
import { createEdits } from './edits.ts';
import type { LessonFields } from './field.ts';
import { later } from './later.tsx';
import { KeepingLine } from './KeepingLine.tsx';
import type { BenchFiles } from './bench-files.ts';
import { OfferedWords, offeredFor } from './OfferedWords.tsx';
import { OnBench } from './OnBench.tsx';
import type { Offers } from './protocol.ts';
import { ShelfList } from './ShelfList.tsx';
import type { Caret } from './FileText.tsx';
import { sitesInOrder } from './sites-in-order.ts';
import { stepsDone } from './steps-done.ts';
import { TenSteps } from './TenSteps.tsx';
import { ToldLine } from './ToldLine.tsx';
import { useCarrying } from './use-carrying.ts';
import { useDrop } from './use-drop.ts';

export interface BenchProps {
  readonly fields: LessonFields;
  /** Where the site's content is served. */
  readonly content: string;
  readonly files: BenchFiles;
  readonly help: string;
  /** Where the Day sheet is. */
  readonly day: string;
}

const titleIn = (text: string): string => {
  const title = outline(text).head?.data?.['title'];
  return typeof title === 'string' ? title : '';
};

// Doors that are shut at first: the page stands before they do.
const FindsInPanel = later(async () => (await import('./FindsInPanel.tsx')).FindsInPanel);
const PhotosPanel = later(async () => (await import('./photos/PhotosPanel.tsx')).PhotosPanel);
const DraftPanel = later(async () => (await import('./DraftPanel.tsx')).DraftPanel);

const NO_SITES: Offers['sites'] = [];

/** The site a lesson names. */
const siteIn = ({ head }: Outline): string => {
  const site = head?.data?.['site'];
  return typeof site === 'string' ? site : '';
};

/** The Bench: a shelf of visits, and the one that is being built. */
export function Bench({ fields, content, files: served, help, day }: BenchProps) {
  const [bench] = useState(createBench);
  const [checker] = useState(() => createChecker(content));
  const [told, tell] = useState('');
  const carrying = useCarrying(bench);
  const isOver = useDrop(carrying.open);
  const [caret, setCaret] = useState<Caret | null>(null);
  const visit = useStore(bench.$visit);
  const lastRead = useRef<Outline | null>(null);
  const text = visit?.history.text ?? '';
  const read = useMemo(() => {
    lastRead.current = outline(text, lastRead.current);
    return lastRead.current;
  }, [text]);
  const shelf = useStore(bench.$shelf);
  const keeping = useStore(bench.$keeping);
  const opened = useStore(checker.$opened);
  const failed = useStore(checker.$failed);
  const checked = useStore(checker.$checked);
  const [pressed, setPressed] = useState<ReadonlySet<StepId>>(new Set());
  const press = (step: StepId): void => {
    setPressed((before) => new Set([...before, step]));
  };
  const [loose, setLoose] = useState<OwnFiles>(NO_FILES);
  const [files, photos] = [visit?.files ?? loose.files, visit?.photos ?? loose.photos];
  const own = useMemo(() => ({ files, photos }), [files, photos]);
  const taking = (visit === null ? loose.taking : visit.taking) ?? null;
  const before = useMemo(() => (taking === null ? null : takeBack(files, taking)), [files, taking]);

  useEffect(() => {
    const keepNow = (): void => void bench.keepNow();
    addEventListener('pagehide', keepNow);
    document.addEventListener('visibilitychange', keepNow);
    void bench.pickUp();
    return () => {
      removeEventListener('pagehide', keepNow);
      document.removeEventListener('visibilitychange', keepNow);
    };
  }, [bench]);
  useEffect(() => {
    checker.open(own);
  }, [checker, own]);

  const edits = createEdits({
    bench,
    tell,
    setCaret,
    starter: (kind) => {
      const sites = opened?.offers.sites ?? [];
      const site = sites.find(({ value }) => value === siteIn(read)) ?? sites[0];
      return site?.starters[kind] ?? `\`\`\`${kind}\ntitle: ${kind}\nminutes: 10\n\`\`\``;
    },
  });
  const putOwn = (all: OwnFiles): void => {
    if (visit === null) setLoose(all);
    else bench.putFiles(all);
  };
  return (
    <div class="lead">
      {failed !== null && (
        <p class="lead-failed" role="alert">
          {say(words.failed, { because: failed })}
        </p>
      )}
      <p role="status" class="unseen">
        {told}
      </p>
      <div class="doors">
        <TenSteps done={stepsDone(visit, read, checked, pressed)} />
        <details class="shelf" open={visit === null ? true : undefined}>
          <summary>{words.shelfTitle}</summary>
          <BeginVisit
            lessons={opened?.lessons ?? []}
            begin={(name, text) => void bench.begin(slug(name) || 'lesson', text)}
            open={carrying.open}
          />
          <ShelfList
            shelf={shelf}
            openId={visit?.id ?? null}
            open={(kept) => void bench.open(kept)}
            drop={(id) => void bench.drop(id)}
            save={carrying.saveShelf}
          />
        </details>
        <FindsInPanel
          checker={checker}
          isOpened={opened !== null}
          sites={opened?.offers.sites ?? NO_SITES}
          files={files}
          take={(taken, told) => {
            const carried = carryPhotos(own, { files: taken, photos });
            putOwn({ ...takeIn(files, carried.files, told), photos });
          }}
          taking={before === null || keeping === 'elsewhere' ? null : taking}
          takeBack={() => {
            if (before !== null) putOwn({ files: before, photos, taking: null });
          }}
        />
        <PhotosPanel bench={bench} checker={checker} site={siteIn(read)} />
        {opened !== null && (
          <DraftPanel
            checker={checker}
            sites={sitesInOrder(opened.offers.sites, files)}
            files={files}
            kinds={Object.keys(fields.kinds)}
            hasVisit={visit !== null && keeping !== 'elsewhere'}
            beginWith={(text) => void bench.begin(slug(titleIn(text)) || 'lesson', text, { ...own, taking })}
            replaceWith={(text) => {
              bench.write(text, 'draft');
            }}
          />
        )}
      </div>
      <ToldLine told={carrying.told} close={carrying.close} />
      {isOver && <p class="drop-here">{benchCarry.dropHere}</p>}
      {visit !== null && (
        <>
          <KeepingLine
            bench={bench}
            visit={visit}
            keeping={keeping}
            hasNoShelf={shelf === null}
            tell={tell}
            press={press}
            save={() => {
              carrying.saveVisit(visit);
            }}
          />
          <OnBench
            key={visit.id}
            visit={visit}
            read={read}
            bench={bench}
            checker={checker}
            fields={fields}
            edits={edits}
            caret={caret}
            setCaret={setCaret}
            isLocked={keeping === 'elsewhere'}
            files={served}
            help={help}
            day={day}
            offered={offeredFor(opened?.offers ?? null)}
            tell={tell}
            press={press}
          />
          <OfferedWords offers={opened?.offers ?? null} site={siteIn(read)} />
        </>
      )}
    </div>
  );
}
