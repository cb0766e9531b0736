import { atom, type ReadableAtom } from 'nanostores';
import * as z from 'zod/mini';
import { dealFor, type ClassActivity, type ClassDeal } from '../../shared/activities/scorers.ts';
import { CLASS_SIZES } from '../../shared/bartering/index.ts';
import { noteProgress } from './progress.ts';
import { keep, recall } from './storage.ts';

const stored = z.object({
  pupils: z.number(),
  gains: z.record(z.string(), z.number()),
  isRead: z.boolean(),
});

/** A class with its cards: how many pupils there are, and how many hands went up for each gain. */
export interface ClassTable extends z.infer<typeof stored> {
  /** The number being keyed in; the cards are dealt for `pupils`. */
  readonly wanted: number;
  readonly deal: ClassDeal;
  readonly isKept: boolean;
}

export interface ClassStore {
  readonly $table: ReadableAtom<ClassTable>;
  /** Goes on from what was kept on this device: after the page's own markup has been taken over as it was drawn. */
  readonly pickUp: () => void;
  readonly want: (pupils: number) => void;
  readonly dealCards: () => void;
  readonly countHands: (gain: number, hands: number) => void;
  readonly readRecord: () => void;
  readonly backToHands: () => void;
}

const within = (pupils: number): number =>
  Math.min(Math.max(Math.round(pupils) || CLASS_SIZES.least, CLASS_SIZES.least), CLASS_SIZES.most);

/** Opens a class's gathering, untouched: `pickUp` goes on from what was kept on this device. */
export function openClass(lesson: string, activity: ClassActivity): ClassStore {
  const dealOf = (pupils: number): ClassDeal =>
    pupils === activity.deal.cards.length ? activity.deal : dealFor(activity, pupils);
  const tableOf = (kept: z.infer<typeof stored>): ClassTable => {
    const pupils = within(kept.pupils);
    return { ...kept, pupils, wanted: pupils, deal: dealOf(pupils), isKept: true };
  };
  const $table = atom<ClassTable>(tableOf({ pupils: activity.deal.cards.length, gains: {}, isRead: false }));
  const change = (next: Partial<ClassTable>): void => {
    const table = { ...$table.get(), ...next };
    const isKept = keep(lesson, activity.id, {
      pupils: table.pupils,
      gains: table.gains,
      isRead: table.isRead,
    });
    $table.set({ ...table, isKept });
    tell();
  };
  const tell = (): void => {
    const { isRead, gains } = $table.get();
    const hasHands = Object.values(gains).some((hands) => hands > 0);
    noteProgress(activity.id, isRead ? 1 : hasHands ? 0.5 : 0);
  };
  return {
    $table,
    pickUp: () => {
      const kept = recall(lesson, activity.id, stored);
      if (kept !== null) $table.set(tableOf(kept));
      tell();
    },
    want: (wanted) => change({ wanted }),
    dealCards: () => {
      const wanted = within($table.get().wanted);
      change({ wanted, pupils: wanted, deal: dealOf(wanted), gains: {}, isRead: false });
    },
    countHands: (gain, hands) =>
      change({ gains: { ...$table.get().gains, [gain]: Math.max(0, Math.min(99, Math.round(hands))) } }),
    readRecord: () => change({ isRead: true }),
    backToHands: () => change({ isRead: false }),
  };
}
