import { choose } from '../ordering/index.ts';

/** A chance as an exact fraction in its lowest terms, and as a number from 0 to 1. */
export interface ExactChance {
  readonly numerator: bigint;
  readonly denominator: bigint;
  readonly value: number;
}

/** A fraction in its lowest terms. @throws RangeError on a denominator of 0. */
function exactChance(numerator: bigint, denominator: bigint): ExactChance {
  if (denominator <= 0n)
    throw new RangeError(`a chance needs a denominator above 0, received ${denominator}`);
  let [large, small] = [denominator, numerator];
  while (small > 0n) [large, small] = [small, large % small];
  const [top, bottom] = [numerator / large, denominator / large];
  // Both are cut to what a number can hold, the same bits from each, so that their share is kept.
  const beyond = BigInt(Math.max(0, bottom.toString(2).length - 1000));
  return { numerator: top, denominator: bottom, value: Number(top >> beyond) / Number(bottom >> beyond) };
}

/**
 * The exact chance that at least `atLeast` pits hold every one of some kinds, each dealt to pits at random and on its own.
 *
 * Each kind keeps the number of pits it lies in. The pits that hold all kinds so far are narrowed kind by kind
 * (a chain of hypergeometric draws). For kinds named before digging; kinds chosen after looking need `bestGroup`.
 * @throws RangeError unless every count is a whole number from 0 to `pits`, and at least one kind is given.
 * @example fullSetTail(9, [5, 4, 4, 4], 3) // 715 / 666792
 */
export function fullSetTail(pits: number, withEachKind: readonly number[], atLeast: number): ExactChance {
  const [first, ...rest] = withEachKind;
  if (
    first === undefined ||
    withEachKind.some((count) => !Number.isInteger(count) || count < 0 || count > pits)
  ) {
    throw new RangeError(
      `each kind must lie in 0 to ${pits} pits, received ${withEachKind.join(', ') || 'none'}`,
    );
  }
  // ways[n]: ways to deal the kinds so far so that one particular first hand stands and n pits hold them all.
  let ways: readonly bigint[] = Array.from({ length: pits + 1 }, (_, full) => (full === first ? 1n : 0n));
  let deals = 1n;
  for (const count of rest) {
    deals *= choose(pits, count);
    ways = ways.map((_, full) =>
      ways.reduce((total, before, held) => {
        if (before === 0n || full > held || full > count || count - full > pits - held) return total;
        return total + before * choose(held, full) * choose(pits - held, count - full);
      }, 0n),
    );
  }
  return exactChance(
    ways.slice(Math.max(0, atLeast)).reduce((total, count) => total + count, 0n),
    deals,
  );
}
