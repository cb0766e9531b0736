import type { Measured } from './measured.ts';
import { weightedKappa } from './weighted-kappa.ts';

/**
 * Cohen's kappa of a square table of counts or shares: agreement beyond what the margins alone give.
 *
 * Rows are one rater's categories, columns the other's. Undefined without items, or where both used one category.
 * Source: Cohen 1960, Educational and Psychological Measurement 20: 37-46.
 * @throws RangeError when the table is not square.
 * @example cohenKappa([[10, 0], [0, 10]]) // { value: 1 }
 */
export const cohenKappa = (table: readonly (readonly number[])[]): Measured =>
  weightedKappa(
    table,
    table.map((_, row) => table.map((__, column) => (row === column ? 0 : 1))),
  );
