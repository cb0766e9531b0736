import { atom, type ReadableAtom } from 'nanostores';
import * as z from 'zod/mini';
import type { TalkActivity } from '../../shared/activities/scorers.ts';
import { noteProgress } from './progress.ts';
import { keep, recall } from './storage.ts';

const TALK_WAYS = ['alone', 'pairs', 'hands'] as const;
export type TalkWay = (typeof TALK_WAYS)[number];

const hands = z.record(z.string(), z.number());
const stored = z.object({
  way: z.enum(TALK_WAYS),
  before: hands,
  weighs: hands,
  after: hands,
  isRead: z.boolean(),
});
type Stored = z.infer<typeof stored>;

/** What is asked in a talk: a stance before, the evidence, a stance after. */
export type TalkAsk = 'before' | 'weighs' | 'after';

/** What was said, and whether the record has been read. */
export interface TalkTable extends Stored {
  readonly isKept: boolean;
}

/** One talk on this device and everything that may be said in it. */
export interface TalkStore {
  readonly $table: ReadableAtom<TalkTable>;
  /** Goes on from what was kept on this device: after the page's own markup has been taken over as it was drawn. */
  readonly pickUp: () => void;
  /** One choice, in place of another. */
  readonly choose: (ask: TalkAsk, choice: string) => void;
  readonly countHands: (ask: TalkAsk, choice: string, count: number) => void;
  readonly playAs: (way: TalkWay) => void;
  readonly readRecord: () => void;
  readonly backToTalk: () => void;
  readonly startAgain: () => void;
}

const NOTHING = { before: {}, weighs: {}, after: {}, isRead: false } as const;

/** Whether anything was said to one of the asks. */
export const isSaid = (said: Readonly<Record<string, number>>): boolean =>
  Object.values(said).some((count) => count > 0);

/** A talk, empty until it is picked up as it was left on this device. */
export function openTalk(lesson: string, { id, stances, evidence }: TalkActivity): TalkStore {
  const empty: TalkTable = { way: 'alone', ...NOTHING, isKept: true };
  const $table = atom<TalkTable>(empty);
  const asks: readonly TalkAsk[] = stances.length > 0 ? ['before', 'weighs', 'after'] : ['weighs'];
  const tell = (): void => {
    const table = $table.get();
    const said = asks.filter((ask) => isSaid(table[ask])).length;
    // The last step is reading the record.
    noteProgress(id, table.isRead ? 1 : said / (asks.length + 1));
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
      const known = (choices: TalkActivity['stances'], said: Readonly<Record<string, number>>): boolean =>
        Object.keys(said).every((choice) => choices.some((each) => each.id === choice));
      // A lesson that was changed may offer other stances: then it begins anew.
      if (
        kept !== null &&
        known(stances, kept.before) &&
        known(stances, kept.after) &&
        known(evidence, kept.weighs)
      ) {
        $table.set({ ...empty, ...kept });
      }
      tell();
    },
    choose: (ask, choice) => change({ [ask]: { [choice]: 1 } }),
    countHands: (ask, choice, count) => {
      const rounded = Math.max(0, Math.min(99, Math.round(count)));
      change({ [ask]: { ...$table.get()[ask], [choice]: rounded } });
    },
    // Counts of hands and a single choice are not to be mixed.
    playAs: (way) => {
      const isMixed = (way === 'hands') !== ($table.get().way === 'hands');
      change(isMixed ? { way, ...NOTHING } : { way });
    },
    readRecord: () => change({ isRead: true }),
    backToTalk: () => change({ isRead: false }),
    startAgain: () => change(NOTHING),
  };
}
