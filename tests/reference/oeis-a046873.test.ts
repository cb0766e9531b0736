import { expect, test } from 'vitest';
import { countOrders } from '../../shared/ordering/index.ts';
import { numbered, ordered } from '../shared/ordering/steps.ts';

/** Subsets of n things, each arrow adding one thing. */
const lattice = (n: number): (readonly [number, number])[] =>
  Array.from({ length: 2 ** n }, (_, set) => set).flatMap((set) =>
    Array.from({ length: n }, (_, thing) => [set, set | (1 << thing)] as const).filter(
      ([from, to]) => from !== to,
    ),
  );

// n = 5 from memory of the same sequence (FM); the others DER, recomputed over down-sets.
test.each([
  { n: 0, expected: 1n },
  { n: 1, expected: 1n },
  { n: 2, expected: 2n },
  { n: 3, expected: 48n },
  { n: 4, expected: 1680384n },
  { n: 5, expected: 14807804035657359360n },
])('OEIS A046873, orders of the Boolean lattice: n = $n has $expected', ({ n, expected }) => {
  expect(countOrders(ordered(numbered(2 ** n, lattice(n))))).toEqual({ count: expected });
});
