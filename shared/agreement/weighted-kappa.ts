import { measured, undefinedBecause, type Measured } from './measured.ts';

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

/**
 * Weighted kappa of a square table: 1 - observed disagreement / disagreement expected from the margins.
 *
 * `disagreementWeights` has 0 on its diagonal and grows with how far apart two categories are.
 * Source: Cohen 1968, Psychological Bulletin 70: 213-220.
 * @throws RangeError when table and weights are not square and of one size.
 * @example weightedKappa([[2, 0], [0, 2]], [[0, 1], [1, 0]]) // { value: 1 }
 */
export function weightedKappa(
  table: readonly (readonly number[])[],
  disagreementWeights: readonly (readonly number[])[],
): Measured {
  const size = table.length;
  if (
    [...table, ...disagreementWeights].some((row) => row.length !== size) ||
    disagreementWeights.length !== size
  ) {
    throw new RangeError(`a table of ${size} rows needs ${size} columns, and weights of the same size`);
  }
  const total = sum(table.map(sum));
  if (total === 0) return undefinedBecause('no-items');
  const rowTotals = table.map(sum);
  const columnTotals = table.map((_, column) => sum(table.map((row) => row[column] ?? 0)));
  let observed = 0;
  let expected = 0;
  for (const [row, weights] of disagreementWeights.entries()) {
    for (const [column, weight] of weights.entries()) {
      observed += (weight * (table[row]?.[column] ?? 0)) / total;
      expected += (weight * (rowTotals[row] ?? 0) * (columnTotals[column] ?? 0)) / (total * total);
    }
  }
  return expected === 0 ? undefinedBecause('one-category') : measured(1 - observed / expected);
}
