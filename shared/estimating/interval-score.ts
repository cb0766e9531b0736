import type { Answer } from './answer.ts';
import type { LogNormal } from './log-normal.ts';
import { standardNormalBelow, standardNormalDensity } from './normal.ts';

export interface Interval {
  readonly lower: number;
  readonly upper: number;
}

/**
 * What an interval costs once the truth is known: its width, and 2/α for each unit by which it misses. Lower is better.
 *
 * `alpha` is the share of truths the interval may miss: 0.2 for "I am 80 % sure". On its edge counts as inside.
 * Source: Gneiting & Raftery 2007, Journal of the American Statistical Association 102: 359-378, section 6.2; Winkler 1972.
 * @example intervalScore({ lower: 20, upper: 60 }, 10, 0.2) // { value: 140 }
 */
export function intervalScore(
  interval: Interval,
  truth: number,
  alpha: number,
): Answer<number, 'interval-reversed'> {
  const { lower, upper } = interval;
  if (!(lower <= upper)) return { value: null, why: 'interval-reversed' };
  const missed = Math.max(lower - truth, 0) + Math.max(truth - upper, 0);
  return { value: upper - lower + (2 / alpha) * missed };
}

/**
 * The same on a scale of ratios, in doublings: an interval from 10 to 40 costs 2; a truth of 80 costs one doubling missed.
 *
 * @example logIntervalScore({ lower: 10, upper: 40 }, 20, 0.2) // { value: 2 }
 */
export function logIntervalScore(
  interval: Interval,
  truth: number,
  alpha: number,
): Answer<number, 'interval-reversed' | 'not-above-zero'> {
  if (!(interval.lower > 0 && interval.upper > 0 && truth > 0)) return { value: null, why: 'not-above-zero' };
  const logs = { lower: Math.log2(interval.lower), upper: Math.log2(interval.upper) };
  return intervalScore(logs, Math.log2(truth), alpha);
}

/** Mean shortfall of a standard normal below `z`: E max(z − Z, 0) = z Φ(z) + φ(z). Source: definition, by parts. */
const shortfall = (z: number): number => z * standardNormalBelow(z) + standardNormalDensity(z);

/**
 * What an interval costs on average, in doublings, when the truth may be any of the cases of a log-normal.
 *
 * Least for the interval from the α/2 to the 1 − α/2 quantile: saying what one honestly thinks costs least
 * (the score is proper: Gneiting & Raftery 2007, section 6.2).
 * @throws RangeError unless 0 < lower <= upper.
 */
export function expectedLogIntervalScore(interval: Interval, truth: LogNormal, alpha: number): number {
  const { lower, upper } = interval;
  if (!(lower > 0 && lower <= upper))
    throw new RangeError(`interval must rise from above 0, received ${lower} to ${upper}`);
  const below = Math.log(lower / truth.middle);
  const above = Math.log(upper / truth.middle);
  const missed =
    truth.sigma === 0
      ? Math.max(below, 0) + Math.max(-above, 0)
      : truth.sigma * (shortfall(below / truth.sigma) + shortfall(-above / truth.sigma));
  return (above - below + (2 / alpha) * missed) / Math.LN2;
}
