import { expect, test } from 'vitest';
import { fleissKappa } from '../../shared/agreement/index.ts';

// Status RF: the table widely used to teach the method; checked there to three decimals (0.210).
test('ten subjects, fourteen raters: statsmodels test_inter_rater.py', () => {
  const countsPerSubject = [
    [0, 0, 0, 0, 14],
    [0, 2, 6, 4, 2],
    [0, 0, 3, 5, 6],
    [0, 3, 9, 2, 0],
    [2, 2, 8, 1, 1],
    [7, 7, 0, 0, 0],
    [3, 2, 6, 3, 0],
    [2, 5, 3, 2, 2],
    [6, 5, 2, 1, 0],
    [0, 2, 2, 3, 7],
  ];
  expect(fleissKappa(countsPerSubject).value).toBeCloseTo(0.209931, 6);
});
