import { comesBefore, type Precedence } from './precedence.ts';

/** Two halves of a set of up to 52 steps; together they make one whole number below 2^52, its key. */
const HALF_BITS = 26;
const HALF = 2 ** HALF_BITS;
/** More steps than this in one knot do not fit a key. */
const MOST_STEPS = 2 * HALF_BITS;
/** More sets than this are not counted: about a second of work. */
const MOST_SETS = 2 ** 20;

/** The ways to have done exactly a set of steps, by the number of steps done and the set's key. */
export interface DownSets {
  readonly steps: readonly number[];
  /** `ways[n]` holds every set of n steps that can be done first, with the number of orders in which to do it. */
  readonly ways: readonly ReadonlyMap<number, bigint>[];
}

/** The key of the set with one more or one fewer step, by the step's place in `steps`. */
export const stepKey = (place: number): number => 2 ** place;

const halves = (key: number): readonly [number, number] => [key % HALF, Math.floor(key / HALF)];

/**
 * Counts, for every set of steps that can be done first, the orders in which to do it; null where there are too many sets.
 *
 * Dynamic programming over down-sets; counting is #P-complete in general (Brightwell & Winkler 1991, Order 8: 225-242).
 */
export function countDownSets(precedence: Precedence, steps: readonly number[]): DownSets | null {
  if (steps.length > MOST_STEPS) return null;
  const needs = steps.map((after) =>
    halves(
      steps.reduce(
        (key, before, place) => key + (comesBefore(precedence, before, after) ? stepKey(place) : 0),
        0,
      ),
    ),
  );
  const bits = steps.map((_, place) => halves(stepKey(place)));
  const ways: Map<number, bigint>[] = [new Map([[0, 1n]])];
  let sets = 1;
  for (let done = 0; done < steps.length; done += 1) {
    const next = new Map<number, bigint>();
    for (const [key, count] of ways[done] ?? []) {
      const [low, high] = halves(key);
      for (const [place, [needLow, needHigh]] of needs.entries()) {
        const [bitLow, bitHigh] = bits[place] ?? [0, 0];
        if (((low & bitLow) | (high & bitHigh)) !== 0 || ((needLow & ~low) | (needHigh & ~high)) !== 0)
          continue;
        const grown = key + stepKey(place);
        next.set(grown, (next.get(grown) ?? 0n) + count);
      }
      if (sets + next.size > MOST_SETS) return null;
    }
    sets += next.size;
    ways.push(next);
  }
  return { steps, ways };
}
