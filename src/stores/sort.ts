import { atom, type ReadableAtom } from 'nanostores';
import * as z from 'zod/mini';
import type { SortActivity } from '../../shared/activities/scorers.ts';
import { noteProgress } from './progress.ts';
import { keep, recall } from './storage.ts';

export const WAYS = ['alone', 'pairs', 'hands'] as const;
export type Way = (typeof WAYS)[number];

const stored = z.object({
  way: z.enum(WAYS),
  placed: z.record(z.string(), z.string()),
  hands: z.record(z.string(), z.record(z.string(), z.number())),
  ownTrays: z.array(z.object({ id: z.string(), name: z.string() })),
  isRead: z.boolean(),
});

/** What is on the table: which finds are in which trays, hands counted, and whether the record has been read. */
export interface SortTable extends z.infer<typeof stored> {
  /** The find in the hand; it comes back to the pit with a reload. */
  readonly hand: string | null;
  /** Earlier placings, newest last, so that one can step back. */
  readonly past: readonly Readonly<Record<string, string>>[];
  readonly isKept: boolean;
}

/** The table of one sort and everything that may be done on it. */
export interface SortStore {
  readonly $table: ReadableAtom<SortTable>;
  /** Goes on from what was kept on this device: after the page's own markup has been taken over as it was drawn. */
  readonly pickUp: () => void;
  readonly lift: (find: string) => void;
  readonly place: (tray: string) => void;
  readonly putBack: () => void;
  readonly stepBack: () => void;
  readonly playAs: (way: Way) => void;
  readonly countHands: (find: string, tray: string, hands: number) => void;
  readonly addTray: (name: string) => void;
  readonly renameTray: (id: string, name: string) => void;
  readonly readRecord: () => void;
  readonly backToTrays: () => void;
  readonly startAgain: () => void;
}

const MOST_TRAYS = 8;

/** The finds that have been answered: placed, or with a hand up for them. */
export const answered = (table: Pick<SortTable, 'way' | 'placed' | 'hands'>): readonly string[] =>
  table.way === 'hands'
    ? Object.keys(table.hands).filter((find) =>
        Object.values(table.hands[find] ?? {}).some((count) => count > 0),
      )
    : Object.keys(table.placed);

const fresh = (activity: SortActivity, trayName: (number: number) => string): SortTable => ({
  way: 'alone',
  placed: {},
  hands: {},
  ownTrays: activity.ownTrays
    ? [1, 2, 3].map((number) => ({ id: `own-${number}`, name: trayName(number) }))
    : [],
  isRead: false,
  hand: null,
  past: [],
  isKept: true,
});

/** Only what the activity still knows: a lesson that was changed may have lost a find or a tray. */
function fitting(activity: SortActivity, state: z.infer<typeof stored>): z.infer<typeof stored> {
  const finds = new Set(activity.finds.map(({ id }) => id));
  const trays = new Set([...activity.trays, ...state.ownTrays].map(({ id }) => id));
  const placed = Object.entries(state.placed).filter(([find, tray]) => finds.has(find) && trays.has(tray));
  const hands = Object.entries(state.hands).filter(([find]) => finds.has(find));
  return { ...state, placed: Object.fromEntries(placed), hands: Object.fromEntries(hands) };
}

/** Opens the table of a sort, empty: `pickUp` goes on from what was kept on this device. */
export function openSort(
  lesson: string,
  activity: SortActivity,
  trayName: (number: number) => string,
): SortStore {
  const empty = fresh(activity, trayName);
  const $table = atom<SortTable>(empty);

  const change = (next: Partial<SortTable>): void => {
    const table = { ...$table.get(), ...next };
    const { way, placed, hands, ownTrays, isRead } = table;
    const isKept = keep(lesson, activity.id, { way, placed, hands, ownTrays, isRead });
    $table.set({ ...table, isKept });
    tell();
  };
  const tell = (): void => {
    const table = $table.get();
    // The last step is reading the record.
    const share = answered(table).length / (activity.finds.length + 1);
    noteProgress(activity.id, table.isRead ? 1 : share);
  };
  const pickUp = (): void => {
    const kept = recall(lesson, activity.id, stored);
    if (kept !== null) $table.set({ ...empty, ...fitting(activity, kept) });
    tell();
  };

  const without = (placed: Readonly<Record<string, string>>, find: string): Record<string, string> =>
    Object.fromEntries(Object.entries(placed).filter(([id]) => id !== find));

  return {
    $table,
    pickUp,
    lift: (find) => change({ hand: find }),
    place: (tray) => {
      const { hand, placed, past } = $table.get();
      if (hand === null) return;
      change({ placed: { ...placed, [hand]: tray }, past: [...past, placed].slice(-100), hand: null });
    },
    putBack: () => {
      const { hand, placed, past, way } = $table.get();
      if (hand === null) return;
      if (way === 'hands' || placed[hand] === undefined) change({ hand: null });
      else change({ placed: without(placed, hand), past: [...past, placed].slice(-100), hand: null });
    },
    stepBack: () => {
      const { past } = $table.get();
      const placed = past.at(-1);
      if (placed !== undefined) change({ placed: { ...placed }, past: past.slice(0, -1), hand: null });
    },
    playAs: (way) => change({ way, hand: null, isRead: false }),
    countHands: (find, tray, hands) => {
      const counts = $table.get().hands;
      change({
        hands: {
          ...counts,
          [find]: { ...counts[find], [tray]: Math.max(0, Math.min(99, Math.round(hands))) },
        },
      });
    },
    addTray: (name) => {
      const { ownTrays } = $table.get();
      if (ownTrays.length >= MOST_TRAYS) return;
      change({ ownTrays: [...ownTrays, { id: `own-${ownTrays.length + 1}`, name }] });
    },
    renameTray: (id, name) =>
      change({
        ownTrays: $table
          .get()
          .ownTrays.map((tray) => (tray.id === id ? { ...tray, name: name.slice(0, 40) } : tray)),
      }),
    readRecord: () => change({ isRead: true, hand: null }),
    backToTrays: () => change({ isRead: false }),
    startAgain: () => change({ ...fresh(activity, trayName), way: $table.get().way }),
  };
}
