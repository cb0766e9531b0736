import { atom, type ReadableAtom } from 'nanostores';
import {
  begin,
  keptPast,
  KEPT_VERSION,
  NO_FILES,
  redo,
  undo,
  write,
  type History,
  type KeptVisit,
  type OwnFiles,
} from '../../shared/bench/index.ts';
import type { PhotoFiles } from '../../shared/library/index.ts';
import { createHold } from './bench-hold.ts';
import { lastOnBench, noteOnBench } from './bench-last.ts';
import { dropPhotos, keepPhotos, readPhotosKept } from './bench-photos.ts';
import { dropVisit, keepVisit, readShelf, type Shelf } from './bench-shelf.ts';
import type { KeepFault } from './keep-fault.ts';

/** How safe the open visit is: written, about to be, open in another tab, or not kept at all. */
export type Keeping = 'kept' | 'waiting' | 'elsewhere' | KeepFault;

/** The visit on the bench. */
export interface OpenVisit extends OwnFiles {
  readonly id: string;
  readonly name: string;
  readonly history: History;
}

/** What lies on the bench and on its shelf, and all that may be done with it. */
export interface BenchStore {
  /** Null until one is opened. */
  readonly $visit: ReadableAtom<OpenVisit | null>;
  readonly $keeping: ReadableAtom<Keeping>;
  /** Null where the browser keeps nothing; undefined until it has been asked. */
  readonly $shelf: ReadableAtom<Shelf | null | undefined>;
  /** Reads the shelf and goes on with the visit this tab had on its bench, or else with the one last changed. */
  readonly pickUp: () => Promise<void>;
  readonly open: (visit: KeptVisit) => Promise<void>;
  /** A new visit, kept from its first sign. */
  readonly begin: (name: string, text: string, own?: OwnFiles) => Promise<void>;
  readonly write: (text: string, cause: string) => void;
  readonly rename: (name: string) => void;
  /** Puts these in the place of the finds and photographs of one's own; what was taken in last stays known where nothing is said of it. */
  readonly putFiles: (own: OwnFiles) => void;
  readonly undo: () => void;
  readonly redo: () => void;
  readonly drop: (id: string) => Promise<void>;
  readonly takeOver: () => Promise<void>;
  /** Writes what is not yet written. */
  readonly keepNow: () => Promise<void>;
}

/** A typed sign is on the device this long after the last one, or after `LONGEST_MS` of typing on. */
const REST_MS = 250;
const LONGEST_MS = 700;

const asKept = ({ id, name, history, files, photos, taking = null }: OpenVisit): KeptVisit => ({
  mark: 'pitlore-visit',
  version: KEPT_VERSION,
  id,
  name,
  text: history.text,
  files,
  photos: [...photos.keys()],
  taking,
  past: keptPast(history),
  changed: new Date().toISOString(),
});

/** The bench of one tab. */
export function createBench(): BenchStore {
  const $visit = atom<OpenVisit | null>(null);
  const $keeping = atom<Keeping>('kept');
  const $shelf = atom<Shelf | null | undefined>(undefined);
  let timer: ReturnType<typeof setTimeout> | undefined;
  let waitingSince: number | null = null;
  /** The photographs that lie on the device as they are. */
  let keptPhotos: PhotoFiles = new Map();

  const relist = async (): Promise<void> => {
    $shelf.set(await readShelf());
  };
  const keepNow = async (): Promise<void> => {
    clearTimeout(timer);
    const visit = $visit.get();
    if (visit === null || waitingSince === null || $keeping.get() === 'elsewhere') return;
    waitingSince = null;
    // A visit that names a photograph is written after it, and one is thrown away only when no visit names it.
    const isKept = (name: string): boolean => keptPhotos.get(name) === visit.photos.get(name);
    const fresh = new Map([...visit.photos].filter(([name]) => !isKept(name)));
    const photoFault = await keepPhotos(visit.id, fresh);
    const fault = (await keepVisit(asKept(visit))) ?? photoFault;
    if (fault === null && visit.photos !== keptPhotos) {
      if ([...keptPhotos.keys()].some((name) => !visit.photos.has(name)))
        await dropPhotos(visit.id, new Set(visit.photos.keys()));
      keptPhotos = visit.photos;
    }
    if ($keeping.get() === 'elsewhere') return;
    $keeping.set(fault ?? (waitingSince === null ? 'kept' : 'waiting'));
    await relist();
  };
  const keepSoon = (): void => {
    if ($keeping.get() === 'elsewhere') return;
    const now = Date.now();
    waitingSince ??= now;
    if ($keeping.get() === 'kept') $keeping.set('waiting');
    clearTimeout(timer);
    timer = setTimeout(() => void keepNow(), Math.min(REST_MS, Math.max(0, waitingSince + LONGEST_MS - now)));
  };
  const hold = createHold(() => {
    clearTimeout(timer);
    $keeping.set('elsewhere');
  }, keepNow);
  const change = (part: Partial<OpenVisit>): void => {
    const visit = $visit.get();
    if (visit === null || $keeping.get() === 'elsewhere') return;
    $visit.set({ ...visit, ...part });
    keepSoon();
  };
  const putOnBench = async (visit: KeptVisit, photos: PhotoFiles, kept: PhotoFiles): Promise<void> => {
    await keepNow();
    keptPhotos = kept;
    $visit.set({
      id: visit.id,
      name: visit.name,
      history: begin(visit.text, visit.past),
      files: visit.files,
      photos,
      taking: visit.taking,
    });
    noteOnBench(visit.id);
    $keeping.set((await hold.take(visit.id)) ? 'kept' : 'elsewhere');
  };
  const openKept = async (visit: KeptVisit): Promise<void> => {
    const photos = await readPhotosKept(visit.id, visit.photos);
    await putOnBench(visit, photos, photos);
  };
  const history = (step: (before: History) => History): void => {
    const visit = $visit.get();
    if (visit !== null) change({ history: step(visit.history) });
  };

  return {
    $visit,
    $keeping,
    $shelf,
    pickUp: async () => {
      await relist();
      const visits = $shelf.get()?.visits ?? [];
      const last = lastOnBench();
      const next = visits.find(({ id }) => id === last) ?? visits[0];
      if (next !== undefined && $visit.get() === null) await openKept(next);
    },
    open: openKept,
    begin: async (name, text, own = NO_FILES) => {
      const visit = { id: crypto.randomUUID?.() ?? `${Date.now()}`, name, history: begin(text), ...own };
      await putOnBench(asKept(visit), own.photos, NO_FILES.photos);
      // Asked once there is something to lose; some browsers decide without a word, and none must.
      if ('storage' in navigator) void navigator.storage.persist().catch(() => false);
      keepSoon();
      await keepNow();
    },
    write: (text, cause) => {
      history((before) => write(before, text, cause, Date.now()));
    },
    rename: (name) => {
      change({ name });
    },
    putFiles: (own) => {
      change(own);
    },
    undo: () => {
      history(undo);
    },
    redo: () => {
      history(redo);
    },
    drop: async (id) => {
      if ($visit.get()?.id === id) {
        clearTimeout(timer);
        waitingSince = null;
        hold.letGo();
        $visit.set(null);
      }
      await dropVisit(id);
      await relist();
    },
    takeOver: async () => {
      const visit = $visit.get();
      if (visit === null) return;
      await hold.takeOver(visit.id);
      await relist();
      // The other tab may have written since: what it kept is what we go on from.
      const kept = $shelf.get()?.visits.find(({ id }) => id === visit.id);
      if (kept !== undefined) {
        keptPhotos = await readPhotosKept(kept.id, kept.photos);
        const history = begin(kept.text, kept.past);
        $visit.set({ ...visit, history, files: kept.files, photos: keptPhotos, taking: kept.taking });
      }
      $keeping.set('kept');
    },
    keepNow,
  };
}
