import type { Answer } from './answer.ts';

/**
 * Ranked probability score: the sum over ordered choices of (share given so far − share true so far)². 0 is sure and right.
 *
 * Not divided by the number of choices less one, as some do. Probabilities must sum to 1 within 1e-6.
 * Source: Epstein 1969; Murphy 1971, Journal of Applied Meteorology 10: 155-156.
 * @throws RangeError when `truthIndex` is no place in the list.
 * @example rankedProbabilityScore([0.2, 0.5, 0.3], 2) // { value: 0.53 }
 */
export function rankedProbabilityScore(
  probabilities: readonly number[],
  truthIndex: number,
): Answer<number, 'sum-not-one' | 'negative-probability'> {
  if (!Number.isInteger(truthIndex) || truthIndex < 0 || truthIndex >= probabilities.length) {
    throw new RangeError(`truth must be one of ${probabilities.length} places, received ${truthIndex}`);
  }
  if (probabilities.some((probability) => probability < 0))
    return { value: null, why: 'negative-probability' };
  const sum = probabilities.reduce((total, probability) => total + probability, 0);
  if (!(Math.abs(sum - 1) <= 1e-6)) return { value: null, why: 'sum-not-one' };
  let givenSoFar = 0;
  let score = 0;
  probabilities.forEach((probability, index) => {
    givenSoFar += probability;
    score += (givenSoFar - (index >= truthIndex ? 1 : 0)) ** 2;
  });
  return { value: score };
}
