/** The stretch an answer is asked on, by ratio: its middle is as many times its start as its end is times its middle. */
export interface Line {
  /** Above 0. */
  readonly from: number;
  readonly to: number;
}

/** The middle of a line by ratio. @example middleOf({ from: 1, to: 100 }) // 10 */
export const middleOf = ({ from, to }: Line): number => Math.sqrt(from) * Math.sqrt(to);

/**
 * The place as far on the other side of the line's middle.
 *
 * Before anything is known an answer could as well be its mirror image: every score here is measured against the best
 * single answer for the two together.
 * @example mirrored(20, { from: 1, to: 100 }) // 5
 */
export const mirrored = (value: number, { from, to }: Line): number => (from / value) * to;

const NICE = [1, 2, 5, 10] as const;

/** The nearest of …1, 2, 5, 10, 20, 50… at or beyond a number above 0. */
function niceNumber(value: number, way: 'down' | 'up'): number {
  const power = 10 ** Math.floor(Math.log10(value) + 1e-12);
  const digits = value / power;
  if (way === 'up') return power * (NICE.find((nice) => nice >= digits - 1e-9) ?? 10);
  return power * (NICE.toReversed().find((nice) => nice <= digits + 1e-9) ?? 1);
}

/** Which end of its line an answer lies towards. */
export type Side = 'low' | 'high';

/**
 * A line with round ends on which the answer lies about a quarter of the way from one end, and its middle at least a
 * doubling outside the range that counts as right: so that the middle of the line is worth nothing.
 *
 * Which side is drawn by chance, so that over lessons no place on the line is favoured.
 * @throws RangeError unless 0 < low <= middle <= high.
 * @example lineFor({ low: 19, middle: 26, high: 35 }, 'low') // { from: 5, to: 1000 }
 */
export function lineFor(
  record: { readonly low: number; readonly middle: number; readonly high: number },
  side: Side,
): Line {
  const { low, middle, high } = record;
  if (!(low > 0 && low <= middle && middle <= high && Number.isFinite(high))) {
    throw new RangeError(`a record must rise from above 0, received ${low}, ${middle}, ${high}`);
  }
  for (let reach = 3; ; reach += 1) {
    const line =
      side === 'low'
        ? { from: niceNumber(low / reach, 'down'), to: niceNumber(high * reach ** 3, 'up') }
        : { from: niceNumber(low / reach ** 3, 'down'), to: niceNumber(high * reach, 'up') };
    const centre = middleOf(line);
    if (side === 'low' ? centre >= 2 * high : centre <= low / 2) return line;
  }
}
