import { expect, test } from 'vitest';
import { countOrders } from '../../shared/ordering/index.ts';
import { numbered, ordered } from '../shared/ordering/steps.ts';

/** The corners of a 2 × 2 × n grid, each before its neighbour further along one side. */
function box(n: number): (readonly [number, number])[] {
  const place = (x: number, y: number, z: number): number => x + 2 * y + 4 * z;
  return Array.from({ length: 4 * n }, (_, corner) => corner).flatMap((corner) => {
    const [x, y, z] = [corner % 2, Math.floor(corner / 2) % 2, Math.floor(corner / 4)];
    const along: (readonly [number, number])[] = [];
    if (x === 0) along.push([corner, place(1, y, z)]);
    if (y === 0) along.push([corner, place(x, 1, z)]);
    if (z < n - 1) along.push([corner, place(x, y, z + 1)]);
    return along;
  });
}

test.each([
  { n: 1, expected: 2n },
  { n: 2, expected: 48n },
  { n: 3, expected: 2452n },
  { n: 4, expected: 183958n },
])('OEIS A114714, orders of a 2 × 2 × $n box: $expected (RF)', ({ n, expected }) => {
  expect(countOrders(ordered(numbered(4 * n, box(n))))).toEqual({ count: expected });
});
