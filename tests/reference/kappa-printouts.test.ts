import { expect, test } from 'vitest';
import { cohenKappa } from '../../shared/agreement/index.ts';

test.each([
  {
    // Status RF. Rater 2 never used category 1: a column total of zero must not divide by zero.
    source: 'SAS printout in the statsmodels test suite, test_inter_rater.py (0.4842)',
    counts: [
      [0, 4, 1],
      [0, 8, 0],
      [0, 1, 5],
    ],
    expected: 0.484163,
  },
  {
    // Status DER: counts reprinted in the psych help page cohen.kappa; value computed, scikit-learn agrees.
    source: 'Fleiss, Cohen & Everitt 1969, table as reprinted in psych',
    counts: [
      [106, 10, 4],
      [22, 28, 10],
      [2, 12, 6],
    ],
    expected: 0.428571,
  },
  {
    // Status DER: the table is ours. Percent agreement is 0.944 and kappa is below zero.
    source: 'the paradox described by Feinstein & Cicchetti 1990',
    counts: [
      [118, 5],
      [2, 0],
    ],
    expected: -0.023392,
  },
])('kappa, $source', ({ counts, expected }) => {
  expect(cohenKappa(counts).value).toBeCloseTo(expected, 6);
});

// Status DER: by definition expected agreement is 1, and kappa 0/0.
test('kappa by definition: one category used leaves nothing to say, and says so', () => {
  expect(
    cohenKappa([
      [12, 0],
      [0, 0],
    ]),
  ).toEqual({ value: null, reason: 'one-category' });
});

// Status DER: by definition there are no items.
test('kappa by definition: no items leaves nothing to say, and says so', () => {
  expect(
    cohenKappa([
      [0, 0],
      [0, 0],
    ]),
  ).toEqual({ value: null, reason: 'no-items' });
});
