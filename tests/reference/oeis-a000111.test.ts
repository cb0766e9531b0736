import { expect, test } from 'vitest';
import { countOrders } from '../../shared/ordering/index.ts';
import { numbered, ordered } from '../shared/ordering/steps.ts';

/** A fence of n steps with fixed direction: 0 < 1 > 2 < 3 > … */
const fence = (n: number): (readonly [number, number])[] =>
  Array.from({ length: Math.max(0, n - 1) }, (_, step) =>
    step % 2 === 0 ? [step, step + 1] : [step + 1, step],
  );

test.each([
  { n: 0, expected: 1n },
  { n: 1, expected: 1n },
  { n: 2, expected: 1n },
  { n: 3, expected: 2n },
  { n: 4, expected: 5n },
  { n: 5, expected: 16n },
  { n: 6, expected: 61n },
  { n: 7, expected: 272n },
])(
  'OEIS A000111, Euler zigzag numbers (André): a fence of $n has $expected orders (RF)',
  ({ n, expected }) => {
    expect(countOrders(ordered(numbered(n, fence(n))))).toEqual({ count: expected });
  },
);
