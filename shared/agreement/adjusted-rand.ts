import { measured, undefinedBecause, type Measured } from './measured.ts';

const pairs = (count: number): number => (count * (count - 1)) / 2;

/**
 * Adjusted Rand index of two groupings of the same items: 0 for groupings alike by chance, 1 for the same groups
 * under any names; below 0 where they agree less than chance. Two groupings that leave nothing to compare (each
 * all in one group, or each item alone, in both) count as the same: 1, as scikit-learn has it.
 *
 * Source: Hubert & Arabie 1985, Journal of Classification 2: 193-218, equation 5.
 * @throws RangeError when the two lists differ in length.
 * @example adjustedRandIndex(['a', 'a', 'b'], ['x', 'x', 'y']) // { value: 1 }
 */
export function adjustedRandIndex(
  truth: readonly (string | number)[],
  answer: readonly (string | number)[],
): Measured {
  if (truth.length !== answer.length) {
    throw new RangeError(`two groupings of ${truth.length} and ${answer.length} items cannot be compared`);
  }
  if (truth.length < 2) return undefinedBecause('no-items');
  const cells = new Map<string, number>();
  const rows = new Map<string | number, number>();
  const columns = new Map<string | number, number>();
  for (const [index, group] of truth.entries()) {
    const other = answer[index] ?? '';
    const cell = JSON.stringify([group, other]);
    cells.set(cell, (cells.get(cell) ?? 0) + 1);
    rows.set(group, (rows.get(group) ?? 0) + 1);
    columns.set(other, (columns.get(other) ?? 0) + 1);
  }
  const pairsIn = (counts: Iterable<number>): number =>
    [...counts].reduce((total, count) => total + pairs(count), 0);
  const together = pairsIn(cells.values());
  const inTruth = pairsIn(rows.values());
  const inAnswer = pairsIn(columns.values());
  const expected = (inTruth * inAnswer) / pairs(truth.length);
  const most = (inTruth + inAnswer) / 2;
  return measured(most === expected ? 1 : (together - expected) / (most - expected));
}
