import { replay } from './handover.ts';
import type { Handover, World } from './world.ts';

/** How often a good was taken by someone who did not want it for themselves. */
export interface GoBetween {
  readonly good: string;
  readonly taken: number;
  readonly notForItself: number;
  /** notForItself / taken. */
  readonly share: number;
}

/**
 * Which thing became the go-between of a chain of swaps: for each good that passed, the share of times its taker wanted it
 * only to swap on. Most often first; goods that were never taken are left out.
 *
 * After an idea in Kiyotaki & Wright 1989, Journal of Political Economy 97: 927-954: a good all take comes to be money.
 */
export function goBetweens(world: World, handovers: readonly Handover[]): GoBetween[] {
  const counts = new Map<string, { taken: number; notForItself: number }>();
  const traders = new Map(world.traders.map((trader) => [trader.id, trader]));
  for (const { handover, refusal } of replay(world, handovers).told) {
    if (refusal !== null) continue;
    const onwardOfThem = traders.get(handover.with)?.forSwapping ?? [];
    for (const [goods, onward] of [
      [handover.give, onwardOfThem],
      [handover.take, world.pupil.forSwapping],
    ] as const) {
      for (const good of goods) {
        const count = counts.get(good) ?? { taken: 0, notForItself: 0 };
        counts.set(good, {
          taken: count.taken + 1,
          notForItself: count.notForItself + (onward.includes(good) ? 1 : 0),
        });
      }
    }
  }
  return [...counts]
    .map(([good, { taken, notForItself }]) => ({ good, taken, notForItself, share: notForItself / taken }))
    .sort((a, b) => b.share - a.share || b.taken - a.taken || (a.good < b.good ? -1 : 1));
}

/** Pairs of traders who could swap straight, and pairs where only one side wants what the other has. */
export interface Coincidences {
  readonly pairs: number;
  /** Each has something the other wants. */
  readonly straight: number;
  /** Only one has: here nothing passes without a go-between, a gift, or a token all would take. */
  readonly oneSided: number;
}

/** How often wants meet at the start of a gathering. Source: Jevons 1875, ch. 1 (double coincidence of wants). */
export function coincidencesOf(world: World): Coincidences {
  const traders = [world.pupil, ...world.traders];
  const tally = { pairs: 0, straight: 0, oneSided: 0 };
  const wantsFrom = (taker: (typeof traders)[number], holder: (typeof traders)[number]): boolean =>
    Object.entries(holder.holds).some(([good, count]) => {
      const has = taker.holds[good] ?? 0;
      return count > 0 && (taker.wants[good]?.[has] ?? 0) > 0;
    });
  for (const [index, one] of traders.entries()) {
    for (const other of traders.slice(index + 1)) {
      const both = Number(wantsFrom(one, other)) + Number(wantsFrom(other, one));
      tally.pairs += 1;
      if (both === 2) tally.straight += 1;
      if (both === 1) tally.oneSided += 1;
    }
  }
  return tally;
}
