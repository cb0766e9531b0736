import { expect, test } from 'vitest';
import {
  median,
  medianAbsoluteDeviation,
  type QuartileDefinition,
  quartiles,
} from '../../shared/estimating/index.ts';

const twelve = [1.3, 1.7, 2.2, 2.5, 2.6, 2.6, 2.7, 2.9, 3.0, 3.1, 3.3, 3.4];
const eleven = [6, 7, 15, 36, 39, 40, 41, 42, 43, 47, 49];

const rows: readonly {
  name: string;
  values: readonly number[];
  definition: QuartileDefinition;
  expected: readonly [number, number, number];
}[] = [
  // RF: Dix, glossary entry quartile.
  {
    name: 'Dix, glossary, quartile: medians of the halves',
    values: twelve,
    definition: 'halves',
    expected: [2.35, 2.65, 3.05],
  },
  // DER: computed with numpy, method linear.
  {
    name: 'Hyndman & Fan 1996, type 7 (numpy)',
    values: twelve,
    definition: 'steps-of-n-less-one',
    expected: [2.425, 2.65, 3.025],
  },
  // DER: computed, R fivenum agrees.
  { name: 'Tukey hinges (R fivenum)', values: eleven, definition: 'hinges', expected: [25.5, 40, 42.5] },
  // DER: Moore & McCabe, median left out of both halves.
  { name: 'Moore & McCabe, median left out', values: eleven, definition: 'halves', expected: [15, 40, 43] },
  // DER: (11 + 1)/4 is the third value and the ninth: type 6 agrees with Moore & McCabe here.
  {
    name: 'Hyndman & Fan 1996, type 6',
    values: eleven,
    definition: 'steps-of-n-plus-one',
    expected: [15, 40, 43],
  },
];

test.each(rows)('$name', ({ values, definition, expected }) => {
  const found = quartiles(values, definition).value;
  expect(found?.lower).toBeCloseTo(expected[0], 9);
  expect(found?.middle).toBeCloseTo(expected[1], 9);
  expect(found?.upper).toBeCloseTo(expected[2], 9);
});

test('Open University M140: with 18 values the lower quartile falls between the 4th and 5th, nearer the 5th (RF)', () => {
  const eighteen = Array.from({ length: 18 }, (_, index) => index + 1);
  expect(quartiles(eighteen, 'steps-of-n-plus-one').value?.lower).toBeCloseTo(4.75, 9);
});

test('textbook set: median 2, deviations 1, 1, 0, 0, 2, 4, 7: MAD 1, unscaled (DER)', () => {
  expect(medianAbsoluteDeviation([1, 1, 2, 2, 4, 6, 9])).toEqual({ value: 1 });
});

test('definition: the median of an even number of values is the mean of the middle two; of none, nothing (DER)', () => {
  expect(median([1, 3, 2, 10])).toEqual({ value: 2.5 });
  expect(median([])).toEqual({ value: null, why: 'no-values' });
});
