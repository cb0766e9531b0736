import { expect, test } from 'vitest';
import { kendallTau } from '../../../shared/ordering/index.ts';

// Expected values by scipy.stats.kendalltau 1.17 (tau-b); DER.
test.each([
  { name: 'a tie in one list', first: [1, 2, 2, 3], second: [1, 2, 3, 4], expected: 0.912870929175277 },
  { name: 'ties in both', first: [1, 1, 2, 2, 3], second: [1, 2, 2, 3, 3], expected: 0.75 },
  { name: 'one list all tied', first: [5, 5, 5], second: [1, 2, 3], expected: null },
  { name: 'one value', first: [1], second: [1], expected: null },
])('$name', ({ first, second, expected }) => {
  const { value, reason } = kendallTau(first, second);
  if (expected === null) expect({ value, reason: typeof reason }).toEqual({ value: null, reason: 'string' });
  else expect(value).toBeCloseTo(expected, 9);
});

test('lists that do not pair are a slip of the caller', () => {
  expect(() => kendallTau([1], [1, 2])).toThrow(RangeError);
});
