import { type LogNormal, meanOf, quantile, sumQuantiles } from '../estimating/index.ts';
import type { Figure } from './figures.ts';
import { type Standing, weakest } from './standing.ts';

/** The units a result may have. */
export type ReckonedUnit = 'g' | 'kg' | 'min' | 'h' | 'share' | 'ratio' | 'count';

/** A figure the model works out, with all it stands on: what any number shown opens when asked how we know. */
export interface Reckoning {
  /** Below this lie 5 per cent of the cases. */
  readonly low: number;
  readonly lowerQuarter: number;
  /** Half of the cases lie below. */
  readonly middle: number;
  readonly upperQuarter: number;
  /** Below this lie 95 per cent of the cases. */
  readonly high: number;
  /** What many cases average; above the middle where a few take very long. */
  readonly mean: number;
  readonly unit: ReckonedUnit;
  /** That of the least sure figure used. */
  readonly status: Standing;
  readonly sources: readonly string[];
  /** Every figure used, in the order of use, each once. */
  readonly used: readonly Figure[];
  /** What is not in it though a maker would have done it. */
  readonly without: readonly string[];
}

/** One part of the work: known within a factor, with the figures it stands on. */
export interface Part extends LogNormal {
  readonly used: readonly Figure[];
}

const SHARES = [0.05, 0.25, 0.5, 0.75, 0.95] as const;

const once = <Item>(items: readonly Item[]): Item[] => [...new Set(items)];

function reckoned(
  quantiles: readonly number[],
  mean: number,
  unit: ReckonedUnit,
  figures: readonly Figure[],
  without: readonly string[],
): Reckoning {
  const [low = 0, lowerQuarter = 0, middle = 0, upperQuarter = 0, high = 0] = quantiles;
  const used = once(figures);
  return {
    low,
    lowerQuarter,
    middle,
    upperQuarter,
    high,
    mean,
    unit,
    status: weakest(used.map(({ status }) => status)),
    sources: once(used.flatMap(({ sources }) => sources)),
    used,
    without,
  };
}

/** The same part in another unit, or so many times. @example timesOver(minutesPart, 1 / 60) */
export const timesOver = (part: Part, factor: number): Part => ({ ...part, middle: part.middle * factor });

/** A part on its own. A part of 0 is exactly 0. */
export const reckonPart = (part: Part, unit: ReckonedUnit, without: readonly string[] = []): Reckoning =>
  reckoned(
    SHARES.map((share) => (part.middle === 0 ? 0 : quantile(part, share))),
    meanOf(part),
    unit,
    part.used,
    without,
  );

/** Parts one after another, the widest given first; the whole's ends are not the sums of the ends. */
export const reckonSum = (
  parts: readonly Part[],
  unit: ReckonedUnit,
  without: readonly string[] = [],
): Reckoning =>
  reckoned(
    sumQuantiles(parts, SHARES),
    parts.reduce((sum, part) => sum + meanOf(part), 0),
    unit,
    parts.flatMap(({ used }) => used),
    without,
  );

/** A factor known by its ends: by what its low end and its high end differ from its middle. */
export interface Ends {
  readonly low: number;
  readonly middle: number;
  readonly high: number;
}

const Z95 = 1.6448536;

/**
 * A product whose factors are known by their 5 and 95 per cent ends.
 *
 * On each side the log distances are combined by the root of the sum of squares (a Fermi estimate): two factors of
 * "times or over 2" give 2^√2. The mean is taken as the middle of the two sides' means.
 */
export function reckonProduct(
  middle: number,
  factors: readonly Ends[],
  unit: ReckonedUnit,
  used: readonly Figure[],
  without: readonly string[] = [],
): Reckoning {
  const sigma = (end: 'low' | 'high'): number =>
    Math.hypot(...factors.map((factor) => Math.log(factor[end] / factor.middle))) / Z95;
  const below = { middle, sigma: sigma('low') };
  const above = { middle, sigma: sigma('high') };
  return reckoned(
    SHARES.map((share) => quantile(share < 0.5 ? below : above, share)),
    (meanOf(below) + meanOf(above)) / 2,
    unit,
    used,
    without,
  );
}
