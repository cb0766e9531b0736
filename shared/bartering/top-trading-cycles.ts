/** A ring of traders: each takes the thing of the next, the last that of the first. */
export type Ring = readonly string[];

export interface TopTradingCycles {
  /** The rings of each round, each starting at its first trader in the order given. */
  readonly rounds: readonly (readonly Ring[])[];
  /** Whose thing each trader goes home with. */
  readonly allocation: Readonly<Record<string, string>>;
}

/**
 * Everyone points at the owner of the best thing left; every ring swaps and leaves; again, until nobody is left.
 * Each ranks things by their owner's name, best first, and ends with their own. Things left out are worse than their own.
 *
 * Ties: a list is strict by its order, so whoever makes the list breaks ties there.
 * Source: Shapley & Scarf 1974, Journal of Mathematical Economics 1: 23-37 (the method credited to Gale).
 *
 * @throws RangeError when a list does not end with the trader's own thing, names one twice or names a stranger.
 * @example topTradingCycles({ a: ['b', 'a'], b: ['a', 'b'] }).allocation // { a: 'b', b: 'a' }
 */
export function topTradingCycles(preferences: Readonly<Record<string, readonly string[]>>): TopTradingCycles {
  const left = new Set(Object.keys(preferences));
  for (const [trader, list] of Object.entries(preferences)) {
    if (list.at(-1) !== trader) throw new RangeError(`the list of ${trader} must end with ${trader}`);
    if (new Set(list).size !== list.length) throw new RangeError(`the list of ${trader} names one twice`);
    for (const other of list)
      if (!left.has(other)) throw new RangeError(`${trader} ranks ${other}, who is not here`);
  }
  const rounds: Ring[][] = [];
  const allocation: Record<string, string> = {};
  while (left.size > 0) {
    const pointsAt = new Map(
      [...left].map((trader) => [trader, preferences[trader]?.find((own) => left.has(own)) ?? trader]),
    );
    const rings: Ring[] = [];
    const walked = new Set<string>();
    for (const first of left) {
      const path: string[] = [];
      let trader = first;
      while (!walked.has(trader)) {
        walked.add(trader);
        path.push(trader);
        trader = pointsAt.get(trader) ?? trader;
      }
      const from = path.indexOf(trader);
      if (from >= 0) rings.push(startingFirst(path.slice(from), [...left]));
    }
    for (const ring of rings) {
      for (const trader of ring) {
        allocation[trader] = pointsAt.get(trader) ?? trader;
        left.delete(trader);
      }
    }
    rounds.push(rings);
  }
  return { rounds, allocation };
}

/** The same ring told from the one who comes first in an order. */
function startingFirst(ring: readonly string[], order: readonly string[]): Ring {
  const from = ring.indexOf(order.find((trader) => ring.includes(trader)) ?? '');
  return [...ring.slice(from), ...ring.slice(0, from)];
}
