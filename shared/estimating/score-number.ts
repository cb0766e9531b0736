import type { Answer } from './answer.ts';
import { type Line, middleOf, mirrored } from './line.ts';
import { logDistance, type Nearness, nearness, type Range } from './log-ratio.ts';

export interface NumberScore {
  /** 1 inside the record's range, 0 for the line's middle, below 0 where the middle would have done better. */
  readonly score: number;
  readonly nearness: Nearness;
  /** Doublings from the record's range; below it negative. */
  readonly doublingsOff: number;
  /** Doublings by which the line's middle is off: what one point costs. */
  readonly doublingsAtMiddle: number;
}

/**
 * Scores one number: 1 − (doublings off) / (doublings by which the line's middle is off).
 *
 * The middle of the line scores exactly 0. Any fixed answer averages at most 0 over an item and its mirror image, since
 * its two distances together are never less than the gap between the two ranges. Honest limit: one item cannot tell a
 * lucky number from a wise one; several items, or many children, can.
 *
 * @example scoreNumber(20, { low: 19, high: 35 }, { from: 5, to: 2000 }) // { value: { score: 1, … } }
 */
export function scoreNumber(
  guess: number,
  record: Range,
  line: Line,
): Answer<NumberScore, 'not-above-zero' | 'middle-is-right'> {
  const off = logDistance(guess, record);
  if (off.value === null) return off;
  const near = nearness(guess, record);
  if (near.value === null) return near;
  const atMiddle = logDistance(middleOf(line), record);
  if (atMiddle.value === null || atMiddle.value === 0) return { value: null, why: 'middle-is-right' };
  const doublingsAtMiddle = Math.abs(atMiddle.value);
  return {
    value: {
      score: 1 - Math.abs(off.value) / doublingsAtMiddle,
      nearness: near.value,
      doublingsOff: off.value,
      doublingsAtMiddle,
    },
  };
}

/**
 * The stretch a knowing guesser who has forgotten which side the answer lies on would choose from: from the record's
 * nearer end to that of its mirror image. A number drawn evenly by ratio from it averages exactly 0.
 */
export function gapOf(record: Range, line: Line): Line {
  const middle = middleOf(line);
  const nearer = record.high < middle ? record.high : record.low;
  const other = mirrored(nearer, line);
  return { from: Math.min(nearer, other), to: Math.max(nearer, other) };
}
