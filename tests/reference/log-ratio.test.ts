import { expect, test } from 'vitest';
import { logRatio } from '../../shared/estimating/index.ts';

// Definition log2(guess / truth) (DER).
test.each([
  { name: 'double is one up', guess: 80, truth: 40, expected: 1 },
  { name: 'half is one down', guess: 20, truth: 40, expected: -1 },
])('definition of the log ratio: $name', ({ guess, truth, expected }) => {
  expect(logRatio(guess, truth, 2).value).toBeCloseTo(expected, 12);
});

test('definition of the log ratio: zero and below have none', () => {
  expect(logRatio(0, 40, 2)).toEqual({ value: null, why: 'not-above-zero' });
  expect(logRatio(-3, 40, 2)).toEqual({ value: null, why: 'not-above-zero' });
});
