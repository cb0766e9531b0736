import type { Answer } from './answer.ts';

/** The values from least to greatest, as a new list. */
export const inOrder = (values: readonly number[]): number[] => [...values].sort((a, b) => a - b);

/** The median of a list already in order. */
export function medianInOrder(ordered: readonly number[]): Answer<number, 'no-values'> {
  const half = Math.floor(ordered.length / 2);
  const upper = ordered[half];
  if (upper === undefined) return { value: null, why: 'no-values' };
  const lower = ordered[half - 1];
  return { value: ordered.length % 2 === 1 || lower === undefined ? upper : (lower + upper) / 2 };
}

/** The middle value, or the mean of the two middle ones. @example median([1, 3, 2, 10]) // { value: 2.5 } */
export const median = (values: readonly number[]): Answer<number, 'no-values'> =>
  medianInOrder(inOrder(values));

/** The arithmetic mean. @example mean([1, 3]) // { value: 2 } */
export function mean(values: readonly number[]): Answer<number, 'no-values'> {
  if (values.length === 0) return { value: null, why: 'no-values' };
  return { value: values.reduce((sum, value) => sum + value, 0) / values.length };
}

/**
 * Median distance from the median, unscaled: no factor of 1.4826.
 *
 * @example medianAbsoluteDeviation([1, 1, 2, 2, 4, 6, 9]) // { value: 1 }
 */
export function medianAbsoluteDeviation(values: readonly number[]): Answer<number, 'no-values'> {
  const centre = median(values);
  if (centre.value === null) return centre;
  const middle = centre.value;
  return median(values.map((value) => Math.abs(value - middle)));
}
