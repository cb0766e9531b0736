import { atom, type ReadableAtom } from 'nanostores';
import * as z from 'zod/mini';
import { noteProgress } from './progress.ts';
import { keep, recall } from './storage.ts';

const COMPARE_WAYS = ['alone', 'pairs', 'hands'] as const;
export type CompareWay = (typeof COMPARE_WAYS)[number];

const stored = z.object({
  way: z.enum(COMPARE_WAYS),
  /** By question, how often each answer was given: 1 for one pupil, a count for hands up. */
  said: z.record(z.string(), z.record(z.string(), z.number())),
  isRead: z.boolean(),
});

/** What was said to each question. */
export type Said = z.infer<typeof stored>['said'];

/** What is on the table: answers, the thing in the hand, and whether the record has been read. */
export interface CompareTable extends z.infer<typeof stored> {
  /** The question in the hand; it lies with the others again after a reload. */
  readonly hand: string | null;
  /** Earlier answers, newest last, so that one can step back. */
  readonly past: readonly Said[];
  readonly isKept: boolean;
}

/** The table of one comparison and everything that may be done on it. */
export interface CompareStore {
  readonly $table: ReadableAtom<CompareTable>;
  /** Goes on from what was kept on this device: after the page's own markup has been taken over as it was drawn. */
  readonly pickUp: () => void;
  readonly lift: (question: string) => void;
  /** Gives one answer to a question in place of what was said before. */
  readonly answer: (question: string, answer: string) => void;
  /** Hands up for one answer to a question, 0 to 99. */
  readonly countHands: (question: string, answer: string, hands: number) => void;
  /** Takes back what was said to the question in the hand. */
  readonly putBack: () => void;
  readonly stepBack: () => void;
  readonly playAs: (way: CompareWay) => void;
  readonly readRecord: () => void;
  readonly backToPits: () => void;
  readonly startAgain: () => void;
}

/** Whether anything was said to a question. */
export const isSaid = (said: Said, question: string): boolean =>
  Object.values(said[question] ?? {}).some((count) => count > 0);

/** The answer most often given to a question; null where none was, or two were as often. */
export function mostSaid(said: Said, question: string): string | null {
  const [most, next] = Object.entries(said[question] ?? {}).toSorted(([, a], [, b]) => b - a);
  return most === undefined || most[1] === 0 || most[1] === next?.[1] ? null : most[0];
}

const LONGEST_PAST = 100;

/** The table of a comparison, empty until it is picked up as it was left on this device. */
export function openCompare(lesson: string, activity: string, questions: readonly string[]): CompareStore {
  const empty: CompareTable = { way: 'alone', said: {}, isRead: false, hand: null, past: [], isKept: true };
  const $table = atom<CompareTable>(empty);
  const tell = (): void => {
    const { said, isRead } = $table.get();
    // The last step is reading the record.
    const done = questions.filter((question) => isSaid(said, question)).length;
    noteProgress(activity, isRead ? 1 : done / (questions.length + 1));
  };
  const change = (next: Partial<CompareTable>): void => {
    const table = { ...$table.get(), ...next };
    const { way, said, isRead } = table;
    $table.set({ ...table, isKept: keep(lesson, activity, { way, said, isRead }) });
    tell();
  };
  const say = (said: Said, next: Partial<CompareTable> = {}): void => {
    const table = $table.get();
    change({ said, past: [...table.past, table.said].slice(-LONGEST_PAST), ...next });
  };
  return {
    $table,
    pickUp: () => {
      const kept = recall(lesson, activity, stored);
      // A lesson that was changed may ask other questions: then it begins anew.
      if (kept !== null && Object.keys(kept.said).every((question) => questions.includes(question)))
        $table.set({ ...empty, ...kept });
      tell();
    },
    lift: (question) => change({ hand: $table.get().hand === question ? null : question }),
    answer: (question, answer) => say({ ...$table.get().said, [question]: { [answer]: 1 } }, { hand: null }),
    countHands: (question, answer, hands) => {
      const { said } = $table.get();
      const count = Math.max(0, Math.min(99, Math.round(hands)));
      say({ ...said, [question]: { ...said[question], [answer]: count } });
    },
    putBack: () => {
      const { hand, said } = $table.get();
      if (hand === null) return;
      if (!isSaid(said, hand)) return change({ hand: null });
      const { [hand]: _taken, ...others } = said;
      say(others, { hand: null });
    },
    stepBack: () => {
      const { past } = $table.get();
      const said = past.at(-1);
      if (said !== undefined) change({ said, past: past.slice(0, -1), hand: null });
    },
    // Counts of hands and single answers are not to be mixed: a new way begins anew where either is hands up.
    playAs: (way) => {
      const table = $table.get();
      const isMixed = (way === 'hands') !== (table.way === 'hands');
      if (isMixed && Object.keys(table.said).length > 0) say({}, { way, hand: null, isRead: false });
      else change({ way, hand: null, isRead: false });
    },
    readRecord: () => change({ isRead: true, hand: null }),
    backToPits: () => change({ isRead: false }),
    startAgain: () => say({}, { isRead: false, hand: null }),
  };
}
