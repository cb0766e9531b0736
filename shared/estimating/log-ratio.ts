import type { Answer } from './answer.ts';

/**
 * How far a guess lies from the truth by ratio: 1 is one `base`-fold too much, −1 one too little; 0 is exact.
 *
 * With base 2 doubling and halving are equally far. Zero and negative numbers have no ratio.
 * @example logRatio(80, 40) // { value: 1 }
 */
export function logRatio(guess: number, truth: number, base = 2): Answer<number, 'not-above-zero'> {
  if (!(guess > 0 && truth > 0)) return { value: null, why: 'not-above-zero' };
  return { value: base === 2 ? Math.log2(guess / truth) : Math.log(guess / truth) / Math.log(base) };
}

/** The ends between which an answer is as right as any: where published figures differ, nobody knows better. */
export interface Range {
  readonly low: number;
  readonly high: number;
}

/**
 * Distance in doublings from a guess to a range: 0 inside it, else to the nearer end; below the range it is negative.
 *
 * Judgement: measuring from the nearer end treats everything inside the range as equally right.
 * @example logDistance(80, { low: 10, high: 40 }) // { value: 1 }
 */
export function logDistance(guess: number, range: Range): Answer<number, 'not-above-zero'> {
  if (guess > 0 && guess >= range.low && guess <= range.high) return { value: 0 };
  return logRatio(guess, guess < range.low ? range.low : range.high);
}

/** How near a guess came, in words a child can hold. */
export const NEARNESSES = ['inside', 'near', 'far'] as const;
export type Nearness = (typeof NEARNESSES)[number];

/** Inside the range; near, when within a factor of two of it (judgement); or far. */
export function nearness(guess: number, range: Range): Answer<Nearness, 'not-above-zero'> {
  const distance = logDistance(guess, range);
  if (distance.value === null) return distance;
  if (distance.value === 0) return { value: 'inside' };
  return { value: Math.abs(distance.value) <= 1 ? 'near' : 'far' };
}
