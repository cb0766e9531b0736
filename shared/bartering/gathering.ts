import type { Trader, World } from './world.ts';

/** A world with numbers for names, so that a search is quick. Trader 0 is the pupil. */
export interface Gathering {
  readonly world: World;
  readonly goodCount: number;
  /** With the pupil. */
  readonly traderCount: number;
  readonly aim: number;
  readonly bundle: number;
  readonly goodIds: readonly string[];
  readonly traders: readonly Trader[];
  readonly goodOf: ReadonlyMap<string, number>;
  readonly traderOf: ReadonlyMap<string, number>;
  /** `worthUpTo[trader][good][count]`: what so many are worth together; beyond the list as its last. */
  readonly worthUpTo: readonly (readonly (readonly number[])[])[];
  readonly spoilsAfter: readonly number[];
  /** The handovers after which nothing more spoils. */
  readonly lastSpoiling: number;
  readonly onlyGiven: readonly boolean[];
  readonly doorShut: readonly boolean[];
  /** The good each trader gives in return; -1 for none. */
  readonly returns: readonly number[];
  /** Those who give something in return. */
  readonly returners: readonly number[];
}

const runningTotals = (worths: readonly number[]): number[] => {
  const totals = [0];
  for (const worth of worths) totals.push((totals.at(-1) ?? 0) + worth);
  return totals;
};

/**
 * Numbers a world for searching.
 *
 * @throws RangeError when the world names a good it has not got, or holds more things than one byte counts;
 * check a hand-written world with `checkWorld` first.
 */
export function gather(world: World): Gathering {
  const goodIds = world.goods.map((good) => good.id);
  const goodOf = new Map(goodIds.map((id, index) => [id, index]));
  const traders = [world.pupil, ...world.traders];
  const known = (id: string): number => {
    const index = goodOf.get(id);
    if (index === undefined) throw new RangeError(`no good is called ${id}`);
    return index;
  };
  for (const trader of traders) {
    for (const [id, count] of Object.entries(trader.holds)) {
      known(id);
      if (!Number.isInteger(count) || count < 0 || count > 99)
        throw new RangeError(`${trader.id} holds ${count} ${id}`);
    }
    for (const id of Object.keys(trader.wants)) known(id);
  }
  const returns = traders.map((trader) => (trader.returns === null ? -1 : known(trader.returns)));
  const spoilsAfter = world.goods.map((good) => good.spoilsAfter ?? Infinity);
  return {
    world,
    goodCount: goodIds.length,
    traderCount: traders.length,
    aim: known(world.aim),
    bundle: world.bundle,
    goodIds,
    traders,
    goodOf,
    traderOf: new Map(traders.map((trader, index) => [trader.id, index])),
    worthUpTo: traders.map((trader) => goodIds.map((id) => runningTotals(trader.wants[id] ?? []))),
    spoilsAfter,
    lastSpoiling: Math.max(0, ...spoilsAfter.filter(Number.isFinite)),
    onlyGiven: world.goods.map((good) => good.onlyGiven),
    doorShut: traders.map((trader) => trader.door === 'gift'),
    returns,
    returners: [...returns.keys()].filter((trader) => trader > 0 && (returns[trader] ?? -1) >= 0),
  };
}
