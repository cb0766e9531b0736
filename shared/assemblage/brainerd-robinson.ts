import { measured, noMeasure, type Measured } from './measured.ts';

/**
 * How alike two pits are by their counts: 200 less the sum of the differences of their percentages, 0 to 200.
 *
 * Only proportions count: a pit of 3 finds may score 200 with one of 300. None where a pit is empty.
 * Source: Brainerd 1951, American Antiquity 16: 301-313; Robinson 1951, American Antiquity 16: 293-301 (plain form, not rescaled).
 * @throws RangeError when the rows differ in length.
 * @example brainerdRobinson([5, 3, 2], [50, 30, 20]) // { value: 200 }
 */
export function brainerdRobinson(first: readonly number[], second: readonly number[]): Measured {
  if (first.length !== second.length) {
    throw new RangeError(`rows of ${first.length} and ${second.length} kinds cannot be compared`);
  }
  const sum = (row: readonly number[]): number => row.reduce((total, count) => total + count, 0);
  const [firstSum, secondSum] = [sum(first), sum(second)];
  if (firstSum === 0 || secondSum === 0) return noMeasure('empty');
  const apart = first.reduce(
    (total, count, kind) => total + Math.abs(count / firstSum - (second[kind] ?? 0) / secondSum),
    0,
  );
  return measured(200 - 100 * apart);
}
