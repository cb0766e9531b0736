import { atom, type ReadableAtom } from 'nanostores';
import * as z from 'zod/mini';
import type { GatheringActivity } from '../../shared/activities/scorers.ts';
import { replay, whyNot, type Handover, type Refusal } from '../../shared/bartering/index.ts';
import { noteProgress } from './progress.ts';
import { keep, recall } from './storage.ts';

export const BARTER_WAYS = ['alone', 'pairs', 'hands'] as const;
export type BarterWay = (typeof BARTER_WAYS)[number];

const goods = z.array(z.string());
const stored = z.object({
  way: z.enum(BARTER_WAYS),
  swaps: z.array(z.object({ with: z.string(), give: goods, take: goods })),
  asked: z.array(z.string()),
  isRead: z.boolean(),
});

/** Round the fire: what has passed, who has been asked, and the offer being made. */
export interface BarterTable extends z.infer<typeof stored> {
  /** The trader one is with; gone with a reload, as is the offer. */
  readonly with: string | null;
  readonly give: readonly string[];
  readonly take: readonly string[];
  /** Why the last offer came to nothing; null once anything changes. */
  readonly refusal: Refusal | null;
  /** Hands up: how many for each trader. */
  readonly hands: Readonly<Record<string, number>>;
  readonly isKept: boolean;
}

export type Side = 'give' | 'take';

/** The table of one gathering and everything that may be done at it. */
export interface BarterStore {
  readonly $table: ReadableAtom<BarterTable>;
  /** Goes on from what was kept on this device: after the page's own markup has been taken over as it was drawn. */
  readonly pickUp: () => void;
  readonly goTo: (trader: string) => void;
  readonly leave: () => void;
  readonly ask: (trader: string) => void;
  /** Puts so many of a good into the offer; fewer where that is more than one side may hold. */
  readonly choose: (side: Side, good: string, count: number) => void;
  /** Makes the offer; what passed, or null where it was refused. */
  readonly offer: () => Handover | null;
  readonly stepBack: () => void;
  readonly playAs: (way: BarterWay) => void;
  readonly countHands: (trader: string, hands: number) => void;
  readonly readRecord: () => void;
  readonly backToSwaps: () => void;
  readonly startAgain: () => void;
}

const noOffer = { give: [], take: [], refusal: null } as const;
const nobody = { with: null, ...noOffer } as const;

const fresh: BarterTable = {
  way: 'alone',
  swaps: [],
  asked: [],
  isRead: false,
  ...nobody,
  hands: {},
  isKept: true,
};

/** Opens a gathering, untouched: `pickUp` goes on from what was kept on this device. */
export function openBarter(lesson: string, activity: GatheringActivity): BarterStore {
  const { world, par } = activity;
  const $table = atom<BarterTable>(fresh);

  const tell = (): void => {
    const table = $table.get();
    // The last step is reading the record.
    noteProgress(activity.id, table.isRead ? 1 : Math.min(table.swaps.length, par) / (par + 1));
  };
  const change = (next: Partial<BarterTable>): void => {
    const table = { ...$table.get(), ...next };
    const { way, asked, isRead } = table;
    const isKept = keep(lesson, activity.id, { way, swaps: table.swaps, asked, isRead });
    $table.set({ ...table, isKept });
    tell();
  };
  // Swaps that a changed lesson no longer allows are left out.
  const pickUp = (): void => {
    const kept = recall(lesson, activity.id, stored);
    if (kept !== null) {
      const { told } = replay(world, kept.swaps);
      const swaps = kept.swaps.filter((_, index) => told[index]?.refusal === null);
      $table.set({ ...fresh, ...kept, swaps, isRead: kept.isRead && swaps.length > 0 });
    }
    tell();
  };

  return {
    $table,
    pickUp,
    goTo: (trader) => change({ ...noOffer, with: trader, hands: {} }),
    leave: () => change(nobody),
    ask: (trader) => {
      const { asked } = $table.get();
      if (!asked.includes(trader)) change({ asked: [...asked, trader] });
    },
    choose: (side, good, count) => {
      const chosen = $table.get()[side];
      const others = world.bundle === 1 ? [] : chosen.filter((other) => other !== good);
      const all = [...others, ...Array.from({ length: count }, () => good)];
      change({ [side]: all.slice(-world.bundle), refusal: null });
    },
    offer: () => {
      const table = $table.get();
      if (table.with === null) return null;
      const handover = { with: table.with, give: [...table.give], take: [...table.take] };
      const refusal = whyNot(world, table.swaps, handover);
      if (refusal !== null) {
        change({ refusal });
        return null;
      }
      change({ ...nobody, swaps: [...table.swaps, handover] });
      return handover;
    },
    stepBack: () => change({ ...nobody, swaps: $table.get().swaps.slice(0, -1) }),
    playAs: (way) => change({ ...nobody, way, hands: {} }),
    countHands: (trader, hands) =>
      change({ hands: { ...$table.get().hands, [trader]: Math.max(0, Math.min(99, Math.round(hands))) } }),
    readRecord: () => change({ ...nobody, isRead: true }),
    backToSwaps: () => change({ isRead: false }),
    startAgain: () => change({ ...fresh, way: $table.get().way }),
  };
}
