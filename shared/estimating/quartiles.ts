import type { Answer } from './answer.ts';
import { inOrder, medianInOrder } from './middle.ts';

/**
 * There is no one quartile. `halves`: medians of the halves, the median left out (Moore & McCabe; most school texts);
 * `hinges`: the median kept in both halves (Tukey 1977); `steps-of-n-plus-one`: position (n + 1)/4 with interpolation
 * (type 6 of Hyndman & Fan 1996, The American Statistician 50: 361-365); `steps-of-n-less-one`: position (n + 3)/4 (their type 7).
 */
export const QUARTILE_DEFINITIONS = [
  'halves',
  'hinges',
  'steps-of-n-plus-one',
  'steps-of-n-less-one',
] as const;
export type QuartileDefinition = (typeof QUARTILE_DEFINITIONS)[number];

export interface Quartiles {
  readonly lower: number;
  readonly middle: number;
  readonly upper: number;
}

/** The value at a position counted from 1, between two neighbours by proportion; the ends hold beyond the list. */
function valueAt(ordered: readonly number[], position: number): number {
  const inside = Math.min(Math.max(position, 1), ordered.length);
  const lower = ordered[Math.floor(inside) - 1] ?? 0;
  const upper = ordered[Math.ceil(inside) - 1] ?? 0;
  return lower + (upper - lower) * (inside - Math.floor(inside));
}

/**
 * Lower quartile, median and upper quartile by a named definition.
 *
 * With one value the halves that leave the median out are empty: no quartiles then.
 * @example quartiles([6, 7, 15, 36, 39, 40, 41, 42, 43, 47, 49], 'halves') // { value: { lower: 15, middle: 40, upper: 43 } }
 */
export function quartiles(
  values: readonly number[],
  definition: QuartileDefinition,
): Answer<Quartiles, 'no-values' | 'too-few-values'> {
  const ordered = inOrder(values);
  const middle = medianInOrder(ordered);
  if (middle.value === null) return middle;
  const count = ordered.length;
  switch (definition) {
    case 'halves':
    case 'hinges': {
      const size = definition === 'halves' ? Math.floor(count / 2) : Math.ceil(count / 2);
      const lower = medianInOrder(ordered.slice(0, size));
      const upper = medianInOrder(ordered.slice(count - size));
      if (lower.value === null || upper.value === null) return { value: null, why: 'too-few-values' };
      return { value: { lower: lower.value, middle: middle.value, upper: upper.value } };
    }
    case 'steps-of-n-plus-one':
      return {
        value: {
          lower: valueAt(ordered, (count + 1) / 4),
          middle: middle.value,
          upper: valueAt(ordered, (3 * (count + 1)) / 4),
        },
      };
    case 'steps-of-n-less-one':
      return {
        value: {
          lower: valueAt(ordered, (count + 3) / 4),
          middle: middle.value,
          upper: valueAt(ordered, (3 * count + 1) / 4),
        },
      };
    default:
      return definition satisfies never;
  }
}

/** Half the distance between the quartiles, which Galton called the probable error. @example probableError({ lower: 1162, middle: 1207, upper: 1236 }) // 37 */
export const probableError = ({ lower, upper }: Quartiles): number => (upper - lower) / 2;
