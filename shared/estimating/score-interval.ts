import type { Answer } from './answer.ts';
import { expectedLogIntervalScore, type Interval } from './interval-score.ts';
import { type Line, middleOf, mirrored } from './line.ts';
import { type LogNormal, quantile } from './log-normal.ts';
import { standardNormalBelow } from './normal.ts';

export interface IntervalScore {
  /** 1 for the record's own interval, which no other beats; 0 for the best interval of one who knows only the line. */
  readonly score: number;
  /** What the interval costs on average, in doublings. */
  readonly cost: number;
  readonly recordCost: number;
  readonly referenceCost: number;
  /** Share of the record's cases that the interval holds. */
  readonly held: number;
}

/** The interval that leaves out α/2 of the record's cases at either end. @example recordInterval({ middle: 26, sigma: 0.47 }, 0.2) */
export const recordInterval = (record: LogNormal, alpha: number): Interval => ({
  lower: quantile(record, alpha / 2),
  upper: quantile(record, 1 - alpha / 2),
});

/**
 * The best interval for one who knows how far from the line's middle the answer lies and how well it is known, but not
 * on which side: the α/2 and 1 − α/2 quantiles of the record and its mirror image in equal parts.
 */
export function referenceInterval(record: LogNormal, line: Line, alpha: number): Interval {
  const mirror = mirrored(record.middle, line);
  const below = (value: number): number =>
    [record.middle, mirror].reduce(
      (sum, middle) => sum + standardNormalBelow(Math.log(value / middle) / record.sigma),
      0,
    ) / 2;
  let low = Math.min(record.middle, mirror) * Math.exp(-8 * record.sigma);
  let high = middleOf(line);
  for (let step = 0; step < 60; step += 1) {
    const middle = Math.sqrt(low * high);
    if (below(middle) < alpha / 2) low = middle;
    else high = middle;
  }
  return { lower: low, upper: mirrored(low, line) };
}

/**
 * Scores an interval on a scale of ratios against a record that is itself a spread: makers and trials differ, so no
 * single number is the truth.
 *
 * Score = (reference cost − cost) / (reference cost − record cost), costs by {@link expectedLogIntervalScore}. It is 1
 * only for the record's own interval; too wide and too narrow both cost. Any interval lying evenly about the line's
 * middle, the widest one and a single number there included, is at most 0; any fixed interval averages at most 0 over an
 * item and its mirror image. Null where the answer lies so near the line's middle that knowing it gains less than a
 * tenth of what the record's interval costs (judgement).
 *
 * @throws RangeError unless the record's sigma is above 0.
 */
export function scoreInterval(
  interval: Interval,
  record: LogNormal,
  line: Line,
  alpha: number,
): Answer<IntervalScore, 'interval-reversed' | 'not-above-zero' | 'middle-is-right'> {
  if (!(record.sigma > 0)) throw new RangeError(`sigma must be above 0, received ${record.sigma}`);
  if (!(interval.lower > 0 && interval.upper > 0)) return { value: null, why: 'not-above-zero' };
  if (interval.lower > interval.upper) return { value: null, why: 'interval-reversed' };
  const cost = expectedLogIntervalScore(interval, record, alpha);
  const recordCost = expectedLogIntervalScore(recordInterval(record, alpha), record, alpha);
  const referenceCost = expectedLogIntervalScore(referenceInterval(record, line, alpha), record, alpha);
  const atStake = referenceCost - recordCost;
  if (atStake < 0.1 * recordCost) return { value: null, why: 'middle-is-right' };
  const shareBelow = (value: number): number =>
    standardNormalBelow(Math.log(value / record.middle) / record.sigma);
  return {
    value: {
      score: (referenceCost - cost) / atStake,
      cost,
      recordCost,
      referenceCost,
      held: shareBelow(interval.upper) - shareBelow(interval.lower),
    },
  };
}
