import { atom, type ReadableAtom } from 'nanostores';
import * as z from 'zod/mini';
import { ASKS, type Ask, type EstimateActivity, type EstimatePlay } from '../../shared/activities/scorers.ts';
import { noteProgress } from './progress.ts';
import { keep, recall } from './storage.ts';

export const ESTIMATE_WAYS = ['alone', 'pairs', 'class'] as const;
export type EstimateWay = (typeof ESTIMATE_WAYS)[number];

const stored = z.object({
  way: z.enum(ESTIMATE_WAYS),
  how: z.enum(ASKS),
  choice: z.nullable(z.string()),
  number: z.nullable(z.number()),
  lower: z.nullable(z.number()),
  upper: z.nullable(z.number()),
  classBy: z.enum(['numbers', 'bins']),
  numbers: z.array(z.number()),
  hands: z.record(z.string(), z.number()),
  bins: z.array(z.number()),
  isRead: z.boolean(),
  levers: z.array(z.number()),
});
type Stored = z.infer<typeof stored>;

/** What has been said, in the activity's unit, and how far the reading is. */
export interface EstimateTable extends Stored {
  readonly isKept: boolean;
}

/** One estimate on this device and everything that may be done with it. */
export interface EstimateStore {
  readonly $table: ReadableAtom<EstimateTable>;
  /** Goes on from what was kept on this device: after the page's own markup has been taken over as it was drawn. */
  readonly pickUp: () => void;
  readonly change: (next: Partial<Stored>) => void;
  readonly addNumber: (number: number) => void;
  readonly removeNumber: (index: number) => void;
  readonly countHands: (choice: string, hands: number) => void;
  readonly countBin: (bin: number, hands: number) => void;
  readonly moveLever: (lever: number, option: number) => void;
  readonly startAgain: () => void;
}

const MOST_NUMBERS = 200;
const MOST_HANDS = 99;

const hands = (count: number): number =>
  Number.isFinite(count) ? Math.max(0, Math.min(MOST_HANDS, Math.round(count))) : 0;

/** What was said as a play; null where nothing was, or the least is above the most. */
export function estimatePlayOf(activity: EstimateActivity, table: Stored): EstimatePlay | null {
  const { id } = activity;
  if (table.way === 'class') {
    if (table.how === 'choose') {
      const isAny = Object.values(table.hands).some((count) => count > 0);
      return isAny ? { activity: id, hands: table.hands } : null;
    }
    if (table.classBy === 'numbers')
      return table.numbers.length > 0 ? { activity: id, numbers: table.numbers } : null;
    return table.bins.some((count) => count > 0)
      ? { activity: id, bins: Array.from(table.bins, (count) => count ?? 0) }
      : null;
  }
  if (table.how === 'choose') return table.choice === null ? null : { activity: id, choice: table.choice };
  if (table.how === 'number') return table.number === null ? null : { activity: id, number: table.number };
  const { lower, upper } = table;
  return lower === null || upper === null || lower > upper
    ? null
    : { activity: id, interval: { lower, upper } };
}

const fresh = (how: Ask, activity: EstimateActivity): EstimateTable => ({
  way: 'alone',
  how,
  choice: null,
  number: null,
  lower: null,
  upper: null,
  classBy: 'numbers',
  numbers: [],
  hands: {},
  bins: [],
  isRead: false,
  levers: activity.levers.map(({ at }) => at),
  isKept: true,
});

/** Only what the activity still knows: a lesson that was changed may ask in another way. */
function fitting(activity: EstimateActivity, state: Stored): Partial<Stored> {
  const asks = activity.asks.map(({ how }) => how);
  const { from, to } = activity.line;
  const isOn = (value: number): boolean => value >= from && value <= to;
  const kept = (value: number | null): number | null => (value !== null && isOn(value) ? value : null);
  const levers = activity.levers.map(({ options, at }, index) => {
    const place = state.levers[index];
    return place !== undefined && options[place] !== undefined ? place : at;
  });
  return {
    ...state,
    how: asks.includes(state.how) ? state.how : (asks[0] ?? 'number'),
    choice: activity.choices.some(({ id }) => id === state.choice) ? state.choice : null,
    number: kept(state.number),
    lower: kept(state.lower),
    upper: kept(state.upper),
    numbers: state.numbers.filter(isOn),
    levers,
  };
}

/** Opens an estimate, empty: `pickUp` goes on from what was kept on this device. */
export function openEstimate(lesson: string, activity: EstimateActivity): EstimateStore {
  const empty = fresh(activity.asks[0]?.how ?? 'number', activity);
  const $table = atom<EstimateTable>(empty);
  const tell = (): void => {
    const table = $table.get();
    const half = estimatePlayOf(activity, table) === null ? 0 : 0.5;
    noteProgress(activity.id, table.isRead ? 1 : half);
  };
  const change = (next: Partial<Stored>): void => {
    const { isKept: _, ...state } = { ...$table.get(), ...next };
    $table.set({ ...state, isKept: keep(lesson, activity.id, state) });
    tell();
  };
  return {
    $table,
    pickUp: () => {
      const before = recall(lesson, activity.id, stored);
      if (before !== null) {
        const first: EstimateTable = { ...empty, ...fitting(activity, before) };
        // What can no longer be scored cannot have been read.
        $table.set(estimatePlayOf(activity, first) === null ? { ...first, isRead: false } : first);
      }
      tell();
    },
    change,
    addNumber: (number) => change({ numbers: [...$table.get().numbers, number].slice(-MOST_NUMBERS) }),
    removeNumber: (index) => change({ numbers: $table.get().numbers.filter((_, place) => place !== index) }),
    countHands: (choice, count) => change({ hands: { ...$table.get().hands, [choice]: hands(count) } }),
    countBin: (bin, count) => {
      const { bins } = $table.get();
      const longest = Math.max(bins.length, bin + 1);
      change({
        bins: Array.from({ length: longest }, (_, place) =>
          place === bin ? hands(count) : (bins[place] ?? 0),
        ),
      });
    },
    moveLever: (lever, option) =>
      change({ levers: $table.get().levers.map((place, index) => (index === lever ? option : place)) }),
    startAgain: () => {
      const { way, how, classBy } = $table.get();
      const { isKept: _, ...state } = fresh(how, activity);
      change({ ...state, way, classBy });
    },
  };
}
