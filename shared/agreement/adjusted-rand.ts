import { measured, undefinedBecause, type Measured } from './measured.ts';

const pairs = (count: number): number => (count * (count - 1)) / 2;

function pairsIn(counts: readonly number[]): number {
  let total = 0;
  for (const count of counts) total += pairs(count);
  return total;
}

/** Groups as numbers from 0, in the order in which they first occur. */
function number(grouping: readonly (string | number)[]): {
  readonly groupOf: readonly number[];
  readonly groups: number;
} {
  const numbers = new Map<string | number, number>();
  const groupOf = grouping.map((group) => {
    const known = numbers.get(group) ?? numbers.size;
    numbers.set(group, known);
    return known;
  });
  return { groupOf, groups: numbers.size };
}

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
  const rows = number(truth);
  const columns = number(answer);
  // Scored for hundreds of shuffles at a time, so groups are numbers and their pairs one flat table.
  const cells = Array.from({ length: rows.groups * columns.groups }, () => 0);
  const rowTotals = Array.from({ length: rows.groups }, () => 0);
  const columnTotals = Array.from({ length: columns.groups }, () => 0);
  for (let item = 0; item < truth.length; item += 1) {
    const row = rows.groupOf[item] ?? 0;
    const column = columns.groupOf[item] ?? 0;
    const cell = row * columns.groups + column;
    cells[cell] = (cells[cell] ?? 0) + 1;
    rowTotals[row] = (rowTotals[row] ?? 0) + 1;
    columnTotals[column] = (columnTotals[column] ?? 0) + 1;
  }
  const together = pairsIn(cells);
  const inTruth = pairsIn(rowTotals);
  const inAnswer = pairsIn(columnTotals);
  const expected = (inTruth * inAnswer) / pairs(truth.length);
  const most = (inTruth + inAnswer) / 2;
  return measured(most === expected ? 1 : (together - expected) / (most - expected));
}
