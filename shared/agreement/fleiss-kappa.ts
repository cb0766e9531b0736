import { measured, undefinedBecause, type Measured } from './measured.ts';

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

/**
 * Fleiss' kappa: how far many raters agree on items, beyond chance. One row an item, one column a category.
 *
 * Undefined without items, with unequal numbers of raters, or where only one category was used.
 * Source: Fleiss 1971, Psychological Bulletin 76: 378-382, equations 1 to 7.
 * @example fleissKappa([[3, 0], [0, 3]]) // { value: 1 }
 */
export function fleissKappa(countsPerItem: readonly (readonly number[])[]): Measured {
  const items = countsPerItem.length;
  const raters = sum(countsPerItem[0] ?? []);
  if (items === 0 || raters < 2) return undefinedBecause('no-items');
  if (countsPerItem.some((counts) => sum(counts) !== raters)) return undefinedBecause('unequal-raters');
  const agreementPerItem = countsPerItem.map(
    (counts) => sum(counts.map((count) => count * (count - 1))) / (raters * (raters - 1)),
  );
  const observed = sum(agreementPerItem) / items;
  const categories = countsPerItem[0]?.length ?? 0;
  const shares = Array.from(
    { length: categories },
    (_, category) => sum(countsPerItem.map((counts) => counts[category] ?? 0)) / (items * raters),
  );
  const expected = sum(shares.map((share) => share * share));
  return expected === 1 ? undefinedBecause('one-category') : measured((observed - expected) / (1 - expected));
}
