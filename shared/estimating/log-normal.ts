import { standardNormalQuantile } from './normal.ts';

/** A quantity known within a factor: half of the cases lie below `middle`; `sigma` is the spread of its natural logarithm. */
export interface LogNormal {
  /** The median, above 0. */
  readonly middle: number;
  /** From 0 up; 0 is a quantity known exactly. */
  readonly sigma: number;
}

/**
 * The value that a share `p` of the cases lies below.
 *
 * @throws RangeError unless 0 < p < 1.
 * @example quantile({ middle: 12, sigma: 0.75 }, 0.95) // 41.2
 */
export const quantile = ({ middle, sigma }: LogNormal, p: number): number =>
  middle * Math.exp(standardNormalQuantile(p) * sigma);

/** The mean, which lies above the middle: M exp(s²/2). @example meanOf({ middle: 12, sigma: 0.75 }) // 15.9 */
export const meanOf = ({ middle, sigma }: LogNormal): number => middle * Math.exp((sigma * sigma) / 2);

const FIVE_TO_NINETY_FIVE = 2 * 1.6448536;

/**
 * The log-normal whose middle is `middle` and whose 5 and 95 per cent ends are as far apart, by ratio, as the ones given.
 *
 * @throws RangeError unless 0 < low <= middle <= high.
 * @example fromEnds({ low: 3.5, middle: 12, high: 41 }).sigma // 0.748
 */
export function fromEnds(ends: {
  readonly low: number;
  readonly middle: number;
  readonly high: number;
}): LogNormal {
  const { low, middle, high } = ends;
  if (!(low > 0 && low <= middle && middle <= high && Number.isFinite(high))) {
    throw new RangeError(`ends must rise from above 0, received ${low}, ${middle}, ${high}`);
  }
  return { middle, sigma: Math.log(high / low) / FIVE_TO_NINETY_FIVE };
}
