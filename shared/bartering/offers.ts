/** An offer that stands: whoever brings the one thing takes the other home. */
export interface Offer {
  readonly give: string;
  readonly get: string;
}

/** The fewest swaps from one thing to another, and one such chain of things; null where no swaps lead there. */
export type OfferChain =
  | { readonly par: number; readonly ways: number; readonly chain: readonly string[] }
  | { readonly par: null; readonly ways: 0; readonly chain: null; readonly why: 'goal-unreachable' };

/**
 * The shortest chain over standing offers, holding one thing at a time. Among chains as short, the one whose
 * offers stand first.
 *
 * @example shortestSwapChain([{ give: 'antler', get: 'axe' }], 'antler', 'axe').par // 1
 */
export function shortestSwapChain(offers: readonly Offer[], start: string, goal: string): OfferChain {
  const reached = new Map([[start, { par: 0, ways: 1, from: '' }]]);
  const line = [start];
  for (const thing of line) {
    const here = reached.get(thing);
    if (here === undefined) continue;
    for (const next of new Set(offers.filter(({ give }) => give === thing).map(({ get }) => get))) {
      const known = reached.get(next);
      if (known === undefined) {
        reached.set(next, { par: here.par + 1, ways: here.ways, from: thing });
        line.push(next);
      } else if (known.par === here.par + 1) known.ways += here.ways;
    }
  }
  const end = reached.get(goal);
  if (end === undefined) return { par: null, ways: 0, chain: null, why: 'goal-unreachable' };
  const chain = [goal];
  for (let thing = goal; thing !== start;) {
    thing = reached.get(thing)?.from ?? start;
    chain.unshift(thing);
  }
  return { par: end.par, ways: end.ways, chain };
}
