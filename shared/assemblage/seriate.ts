import { fiedlerOrder } from './fiedler-order.ts';
import { robinsonBreaks, type RobinsonBreaks } from './robinson-form.ts';

/** An order of pits in which neighbours are alike. It has no direction: the mirror is equally right. It need not be time. */
export interface Seriation {
  /** Places of the pits in order; of the two directions, the one that begins with the pit listed earlier. */
  readonly order: readonly number[];
  readonly breaks: RobinsonBreaks;
  /** True where likeness never rises away from the diagonal. */
  readonly isRobinson: boolean;
  /** Every order with as few breaks, mirrors counted once; null where not every order was tried. */
  readonly asGood: number | null;
}

/** Up to this many pits every order is tried: 8!/2 = 20,160. */
const TRY_ALL = 8;
/** Steps of work for the improving of longer orders; about a tenth of a second. */
const WORK = 4e7;

const isBetter = (one: RobinsonBreaks, other: RobinsonBreaks): boolean =>
  one.events < other.events || (one.events === other.events && one.excess < other.excess - 1e-9);

const faceForward = (order: readonly number[]): readonly number[] =>
  (order[0] ?? 0) <= (order.at(-1) ?? 0) ? order : order.toReversed();

function tryAll(similarity: readonly (readonly number[])[]): Seriation {
  const all = [...similarity.keys()];
  let best: { order: readonly number[]; breaks: RobinsonBreaks } = {
    order: all,
    breaks: robinsonBreaks(similarity),
  };
  let asGood = 0;
  let fewest = Infinity;
  const extend = (order: readonly number[], left: readonly number[]): void => {
    if (left.length === 0) {
      if (order.length > 1 && (order[0] ?? 0) > (order.at(-1) ?? 0)) return;
      const breaks = robinsonBreaks(similarity, order);
      if (breaks.events < fewest) [fewest, asGood] = [breaks.events, 0];
      if (breaks.events === fewest) asGood += 1;
      if (isBetter(breaks, best.breaks)) best = { order, breaks };
      return;
    }
    for (const next of left) {
      extend(
        [...order, next],
        left.filter((pit) => pit !== next),
      );
    }
  };
  extend([], all);
  return { ...best, isRobinson: best.breaks.events === 0, asGood };
}

/** From each pit, always on to the pit most like the last. */
function chainFrom(similarity: readonly (readonly number[])[], start: number): readonly number[] {
  const order = [start];
  while (order.length < similarity.length) {
    const row = similarity[order.at(-1) ?? 0] ?? [];
    const left = [...row.keys()].filter((pit) => !order.includes(pit));
    order.push(left.reduce((best, pit) => ((row[pit] ?? 0) > (row[best] ?? 0) ? pit : best), left[0] ?? 0));
  }
  return order;
}

/** Takes one pit out and puts it in elsewhere as long as that mends breaks and work is left. */
function improve(
  similarity: readonly (readonly number[])[],
  start: readonly number[],
  work: number,
): { order: readonly number[]; breaks: RobinsonBreaks } {
  let best = { order: start, breaks: robinsonBreaks(similarity, start) };
  let tries = work / Math.max(1, start.length ** 3 / 3);
  for (let isMending = true; isMending && best.breaks.events > 0;) {
    isMending = false;
    for (const pit of start) {
      const others = best.order.filter((other) => other !== pit);
      for (let place = 0; place <= others.length && tries > 0; place += 1) {
        const order = others.toSpliced(place, 0, pit);
        const breaks = robinsonBreaks(similarity, order);
        tries -= 1;
        if (isBetter(breaks, best.breaks)) {
          best = { order, breaks };
          isMending = true;
        }
      }
    }
  }
  return best;
}

/**
 * Orders pits so that likeness falls away from the diagonal with the fewest breaks.
 *
 * Up to 8 pits every order is tried. Beyond, the spectral order and a few chains are improved by moving one pit at a time: exact
 * where an order without breaks exists and is found, otherwise good but not proved best.
 * @throws RangeError when the matrix is not square.
 */
export function seriate(similarity: readonly (readonly number[])[]): Seriation {
  if (similarity.some((row) => row.length !== similarity.length))
    throw new RangeError('likeness needs a square table');
  if (similarity.length <= TRY_ALL) return tryAll(similarity);
  const starts = [
    fiedlerOrder(similarity),
    ...[0, similarity.length >> 1, similarity.length - 1].map((pit) => chainFrom(similarity, pit)),
  ];
  let best = improve(similarity, starts[0] ?? [], WORK / starts.length);
  for (const start of starts.slice(1)) {
    if (best.breaks.events === 0) break;
    const found = improve(similarity, start, WORK / starts.length);
    if (isBetter(found.breaks, best.breaks)) best = found;
  }
  return {
    order: faceForward(best.order),
    breaks: best.breaks,
    isRobinson: best.breaks.events === 0,
    asGood: null,
  };
}
