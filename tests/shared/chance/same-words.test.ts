import { expect, test } from 'vitest';
import { shuffle, uniformBelow } from '../../../shared/chance/index.ts';
import { xoshiro128 } from '../../../shared/chance/xoshiro.ts';

test('xoshiro128** 1.1 gives the reference words (Blackman & Vigna, as in the rand_xoshiro test; RF)', () => {
  const next = xoshiro128([1, 2, 3, 4]);
  expect(Array.from({ length: 10 }, next)).toEqual([
    11520, 0, 5927040, 70819200, 2031721883, 1637235492, 1287239034, 3734860849, 3729100597, 4258142804,
  ]);
});

test('a shuffle is Knuth’s algorithm P with rejection, from the last down (computed in Python; DER)', () => {
  expect(shuffle({ next: xoshiro128([1, 2, 3, 4]) }, [0, 1, 2, 3, 4, 5, 6, 7, 8, 9])).toEqual([
    7, 3, 1, 6, 2, 5, 4, 8, 9, 0,
  ]);
});

// 2^32 = 3 × 1431655765 + 1: the one word beyond the last full multiple is 4294967295. 2^32 - 2^32 mod 7 = 4294967292.
test.each([
  { bound: 3, words: [4294967295, 5], expected: 2 },
  { bound: 3, words: [4294967294, 5], expected: 2 },
  { bound: 7, words: [4294967292, 4294967295, 8], expected: 1 },
  { bound: 7, words: [4294967291, 8], expected: 6 },
  { bound: 4294967296, words: [4294967295], expected: 4294967295 },
  { bound: 2147483649, words: [2147483649, 2147483648], expected: 2147483648 },
  { bound: 1, words: [4294967295], expected: 0 },
])('words beyond the last full multiple of $bound are drawn again', ({ bound, words, expected }) => {
  const left = [...words];
  expect(uniformBelow({ next: () => left.shift() ?? -1 }, bound)).toBe(expected);
});

test('a state of four zeros is refused', () => {
  expect(() => xoshiro128([0, 0, 0, 0])).toThrow(RangeError);
});
