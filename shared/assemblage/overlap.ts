import type { Counts } from './counts.ts';
import { measured, noMeasure, type Measured } from './measured.ts';

/** How many kinds two pits share and do not share. */
export interface Overlap {
  readonly both: number;
  readonly onlyFirst: number;
  readonly onlySecond: number;
}

/** Compares two rows of counts over the same kinds; a count above 0 is present. @throws RangeError on unequal lengths. */
export function overlap(first: readonly number[], second: readonly number[]): Overlap {
  if (first.length !== second.length) {
    throw new RangeError(`rows of ${first.length} and ${second.length} kinds cannot be compared`);
  }
  const isPresent = (row: readonly number[], kind: number): boolean => (row[kind] ?? 0) > 0;
  const kinds = [...first.keys()];
  return {
    both: kinds.filter((kind) => isPresent(first, kind) && isPresent(second, kind)).length,
    onlyFirst: kinds.filter((kind) => isPresent(first, kind) && !isPresent(second, kind)).length,
    onlySecond: kinds.filter((kind) => !isPresent(first, kind) && isPresent(second, kind)).length,
  };
}

/** Compares two lists of kinds; a kind named twice counts once. @example overlapOfKinds(['pin'], ['pin', 'jaw']).both // 1 */
export function overlapOfKinds(first: readonly string[], second: readonly string[]): Overlap {
  const [one, other] = [new Set(first), new Set(second)];
  const both = [...one].filter((kind) => other.has(kind)).length;
  return { both, onlyFirst: one.size - both, onlySecond: other.size - both };
}

/** Shared kinds of all kinds in either pit, 0 to 1; none where both are empty. Source: Jaccard 1901, Bull. Soc. Vaud. Sci. Nat. 37: 547-579. */
export function jaccard({ both, onlyFirst, onlySecond }: Overlap): Measured {
  const either = both + onlyFirst + onlySecond;
  return either === 0 ? noMeasure('both-empty') : measured(both / either);
}

/** Twice the shared kinds of the kinds of each pit together, 0 to 1; none where both are empty. Source: Dice 1945, Ecology 26: 297-302; Sørensen 1948. */
export function sorensenDice({ both, onlyFirst, onlySecond }: Overlap): Measured {
  const sum = 2 * both + onlyFirst + onlySecond;
  return sum === 0 ? noMeasure('both-empty') : measured((2 * both) / sum);
}

/** Where each kind of a table lies, seen from two of its pits. */
export interface KindsOfTwo {
  readonly both: readonly string[];
  readonly onlyFirst: readonly string[];
  readonly onlySecond: readonly string[];
  readonly neither: readonly string[];
}

/** Which kinds lie in both pits, only in one, or in neither. @throws RangeError on a pit that is not in the table. */
export function kindsOfTwo(counts: Counts, first: string, second: string): KindsOfTwo {
  const [one, other] = [first, second].map((pit) => {
    const row = counts.rows[counts.pits.indexOf(pit)];
    if (row === undefined) throw new RangeError(`${pit} is not in the table`);
    return row;
  });
  const where = (inFirst: boolean, inSecond: boolean): readonly string[] =>
    counts.kinds.filter(
      (_, kind) => (one?.[kind] ?? 0) > 0 === inFirst && (other?.[kind] ?? 0) > 0 === inSecond,
    );
  return {
    both: where(true, true),
    onlyFirst: where(true, false),
    onlySecond: where(false, true),
    neither: where(false, false),
  };
}
