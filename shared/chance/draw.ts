import type { Stream } from './stream.ts';

const RANGE = 0x1_0000_0000;

/**
 * A whole number from 0 to `bound` - 1, each as likely: words beyond the last full multiple are drawn again.
 *
 * @throws RangeError unless `bound` is a whole number from 1 to 2^32.
 */
export function uniformBelow(chance: Pick<Stream, 'next'>, bound: number): number {
  if (!Number.isInteger(bound) || bound < 1 || bound > RANGE) {
    throw new RangeError(`bound must be a whole number from 1 to ${RANGE}, received ${bound}`);
  }
  let word = chance.next();
  // Only the last few words may lie beyond the last full multiple; the remainder is worked out for them alone.
  while (word >= RANGE - bound && word >= RANGE - (RANGE % bound)) word = chance.next();
  return word % bound;
}

/** A number from 0 (included) to 1 (left out), with 32 bits. */
export const uniform = (chance: Pick<Stream, 'next'>): number => chance.next() / RANGE;

/**
 * A new list in random order; the one given is left as it was.
 *
 * Source: Knuth, The Art of Computer Programming vol. 2, algorithm P, with rejection.
 */
export function shuffle<Item>(chance: Pick<Stream, 'next'>, items: readonly Item[]): Item[] {
  const result = [...items];
  for (let last = result.length - 1; last > 0; last -= 1) {
    const other = uniformBelow(chance, last + 1);
    const held = result[last] as Item; // both indices lie inside the list
    result[last] = result[other] as Item;
    result[other] = held;
  }
  return result;
}

/** One item, each as likely. @throws RangeError on an empty list. */
export function pick<Item>(chance: Pick<Stream, 'next'>, items: readonly Item[]): Item {
  return items[uniformBelow(chance, items.length)] as Item; // the index lies inside the list
}
