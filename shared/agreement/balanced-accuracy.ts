import { measured, undefinedBecause, type Measured } from './measured.ts';

/**
 * The mean, over the categories that occur in the truth, of the share of each that was answered right.
 *
 * Source: scikit-learn user guide, "Balanced accuracy score" (definition of macro-averaged recall).
 * @throws RangeError when the two lists differ in length.
 * @example balancedAccuracy(['a', 'a', 'b'], ['a', 'b', 'b']) // { value: 0.75 }
 */
export function balancedAccuracy(
  truth: readonly (string | number)[],
  answer: readonly (string | number)[],
): Measured {
  if (truth.length !== answer.length) {
    throw new RangeError(`${truth.length} truths and ${answer.length} answers cannot be compared`);
  }
  const seen = new Map<string | number, { all: number; right: number }>();
  for (const [index, category] of truth.entries()) {
    const counts = seen.get(category) ?? { all: 0, right: 0 };
    seen.set(category, { all: counts.all + 1, right: counts.right + (answer[index] === category ? 1 : 0) });
  }
  if (seen.size === 0) return undefinedBecause('no-items');
  const recalls = [...seen.values()].map(({ all, right }) => right / all);
  return measured(recalls.reduce((total, recall) => total + recall, 0) / recalls.length);
}
