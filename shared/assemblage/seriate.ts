import { improvedOrder, type OrderFound } from './improve-order.ts';
import { isBetter, robinsonBreaks, type RobinsonBreaks } from './robinson-form.ts';
import { TIE } from './tally.ts';

/** An order of pits in which neighbours are alike. It has no direction: the mirror is equally right. It need not be time. */
export interface Seriation {
  /** Places of the pits in order; of the two directions, the one that begins with the pit listed earlier. */
  readonly order: readonly number[];
  readonly breaks: RobinsonBreaks;
  /** True where likeness never rises away from the diagonal. */
  readonly isRobinson: boolean;
  /** Every order with as few break events, mirrors counted once; null where not every order was weighed. */
  readonly asGood: number | null;
}

/** Up to this many pits every order is weighed. ASM. */
const MOST_PITS = 10;
/** Beginnings of orders weighed before giving up on proof: every order of 9 pits is well within it. ASM, measured. */
const MOST_BEGINNINGS = 1_500_000;

/**
 * Weighs every order, leaving a beginning as soon as it must come to more events than the best whole order; null where there are too many.
 *
 * A pit that is still to come makes at least the events it would make if it came next: a longer beginning only adds to them.
 */
function weighAll(similarity: readonly (readonly number[])[], start: OrderFound): Seriation | null {
  const size = similarity.length;
  if (size > MOST_PITS) return null;
  const events = new Uint8Array(size ** 3);
  const at = (row: number, column: number): number => similarity[row]?.[column] ?? 0;
  for (let first = 0; first < size; first += 1) {
    for (let middle = 0; middle < size; middle += 1) {
      for (let last = 0; last < size; last += 1) {
        const outer = at(first, last) - TIE;
        events[(last * size + first) * size + middle] =
          (outer > at(first, middle) ? 1 : 0) + (outer > at(middle, last) ? 1 : 0);
      }
    }
  }
  let best = start;
  let fewest = start.breaks.events;
  let asGood = 0;
  let beginnings = 0;
  const order: number[] = [];
  const isUsed = similarity.map(() => false);
  // What each pit still to come would add, one row for each length of the beginning.
  const adds = new Uint16Array((size + 1) * size);
  const extend = (soFar: number): boolean => {
    beginnings += 1;
    if (beginnings > MOST_BEGINNINGS) return false;
    if (order.length === size) {
      if (size > 1 && (order[0] ?? 0) > (order[size - 1] ?? 0)) return true; // the mirror of one weighed already
      asGood = soFar < fewest ? 1 : asGood + 1;
      fewest = soFar;
      const breaks = robinsonBreaks(similarity, order);
      if (isBetter(breaks, best.breaks)) best = { order: [...order], breaks };
      return true;
    }
    const length = order.length;
    for (let next = 0; next < size; next += 1) {
      if (isUsed[next] === true) continue;
      const total = soFar + (adds[length * size + next] ?? 0);
      let least = total;
      for (let later = 0; later < size; later += 1) {
        if (isUsed[later] === true || later === next) continue;
        let more = adds[length * size + later] ?? 0;
        for (const first of order) more += events[(later * size + first) * size + next] ?? 0;
        adds[(length + 1) * size + later] = more;
        least += more;
      }
      if (least > fewest) continue;
      isUsed[next] = true;
      order.push(next);
      const isDone = extend(total);
      order.pop();
      isUsed[next] = false;
      if (!isDone) return false;
    }
    return true;
  };
  if (!extend(0)) return null;
  return { ...forward(best), isRobinson: fewest === 0, asGood };
}

const forward = ({ order, breaks }: OrderFound): OrderFound => ({
  order: (order[0] ?? 0) <= (order.at(-1) ?? 0) ? order : order.toReversed(),
  breaks,
});

/**
 * Orders pits so that likeness falls away from the diagonal with the fewest break events, and of those the least excess.
 *
 * A good order is reached first (spectral, then moving one pit at a time); then every order that could be better is weighed, which
 * proves it for nine pits or fewer and often for ten. Where `asGood` is null the order is good but not proved best.
 * @throws RangeError when the matrix is not square.
 * @example seriate([[200, 80, 150], [80, 200, 120], [150, 120, 200]]).order // [0, 2, 1]
 */
export function seriate(similarity: readonly (readonly number[])[]): Seriation {
  if (similarity.some((row) => row.length !== similarity.length))
    throw new RangeError('likeness needs a square table');
  const reached = improvedOrder(similarity);
  return (
    weighAll(similarity, reached) ?? {
      ...forward(reached),
      isRobinson: reached.breaks.events === 0,
      asGood: null,
    }
  );
}
