import { atom, type ReadableAtom } from 'nanostores';
import * as z from 'zod/mini';
import type { HandleActivity, Sense } from '../../shared/activities/scorers.ts';
import { noteProgress } from './progress.ts';
import { keep, recall } from './storage.ts';

const HANDLE_WAYS = ['alone', 'pairs', 'hands'] as const;
export type HandleWay = (typeof HANDLE_WAYS)[number];

const stored = z.object({
  way: z.enum(HANDLE_WAYS),
  /** The piece that is held, by its place in the order of passing, from 0. */
  at: z.number(),
  met: z.record(z.string(), z.array(z.enum(['look', 'feel', 'listen']))),
  asks: z.record(z.string(), z.number()),
  isRead: z.boolean(),
});
type Stored = z.infer<typeof stored>;

/** What was met at the table, what one would ask about, and whether the record has been read. */
export interface HandleTable extends Stored {
  readonly isKept: boolean;
}

/** One handling session on this device and everything that may be done in it. */
export interface HandleStore {
  readonly $table: ReadableAtom<HandleTable>;
  /** Goes on from what was kept on this device: after the page's own markup has been taken over as it was drawn. */
  readonly pickUp: () => void;
  /** Takes a piece from the tray, by its place in the order of passing. */
  readonly take: (place: number) => void;
  /** Says that a piece was met with a sense; said again, it is taken back. */
  readonly meet: (piece: string, sense: Sense) => void;
  /** One piece to ask about, in place of another. */
  readonly ask: (piece: string) => void;
  readonly countHands: (piece: string, hands: number) => void;
  readonly playAs: (way: HandleWay) => void;
  readonly readRecord: () => void;
  readonly backToTray: () => void;
  readonly startAgain: () => void;
}

/** The pieces that were met with some sense. */
export const metPieces = ({ met }: Pick<Stored, 'met'>): readonly string[] =>
  Object.keys(met).filter((piece) => (met[piece] ?? []).length > 0);

/** A handling session, empty until it is picked up as it was left on this device. */
export function openHandle(lesson: string, { id, pieces }: HandleActivity): HandleStore {
  const empty: HandleTable = { way: 'alone', at: 0, met: {}, asks: {}, isRead: false, isKept: true };
  const $table = atom<HandleTable>(empty);
  const tell = (): void => {
    const table = $table.get();
    // The last step is reading the record.
    noteProgress(id, table.isRead ? 1 : metPieces(table).length / (pieces.length + 1));
  };
  const change = (next: Partial<Stored>): void => {
    const { isKept: _, ...state } = { ...$table.get(), ...next };
    $table.set({ ...state, isKept: keep(lesson, id, state) });
    tell();
  };
  return {
    $table,
    pickUp: () => {
      const kept = recall(lesson, id, stored);
      const known = new Set(pieces.map((piece) => piece.id));
      // A lesson that was changed may have other pieces: then it begins anew.
      const fits =
        kept !== null &&
        pieces[kept.at] !== undefined &&
        [...Object.keys(kept.met), ...Object.keys(kept.asks)].every((piece) => known.has(piece));
      if (fits) $table.set({ ...empty, ...kept });
      tell();
    },
    take: (place) => {
      if (pieces[place] !== undefined) change({ at: place });
    },
    meet: (piece, sense) => {
      const { met } = $table.get();
      const before = met[piece] ?? [];
      const after = before.includes(sense) ? before.filter((each) => each !== sense) : [...before, sense];
      change({ met: { ...met, [piece]: after } });
    },
    ask: (piece) => change({ asks: { [piece]: 1 } }),
    countHands: (piece, hands) => {
      const count = Math.max(0, Math.min(99, Math.round(hands)));
      change({ asks: { ...$table.get().asks, [piece]: count } });
    },
    // Counts of hands and a single choice are not to be mixed.
    playAs: (way) => {
      const isMixed = (way === 'hands') !== ($table.get().way === 'hands');
      change(isMixed ? { way, asks: {} } : { way });
    },
    readRecord: () => change({ isRead: true }),
    backToTray: () => change({ isRead: false }),
    startAgain: () => change({ at: 0, met: {}, asks: {}, isRead: false }),
  };
}
