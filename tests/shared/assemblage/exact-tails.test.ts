import { expect, test } from 'vitest';
import {
  companyTail,
  fisherExact,
  fisherOfPits,
  fullSetTail,
  hypergeometric,
  sharedByDeal,
} from '../../../shared/assemblage/index.ts';

// scipy.stats.fisher_exact and hypergeom 1.17 (DER).
test.each([
  {
    name: 'a common table',
    table: [
      [8, 2],
      [1, 5],
    ],
    greater: 0.024475524475524476,
    twoSided: 0.03496503496503497,
  },
  {
    name: 'three finds against three hundred',
    table: [
      [3, 0],
      [120, 180],
    ],
    greater: 0.06592258750637994,
    twoSided: 0.06592258750637994,
  },
  {
    name: 'thousands of finds',
    table: [
      [1200, 900],
      [1100, 1000],
    ],
    greater: 0.0010714089488627577,
    twoSided: 0.0021428178977255154,
  },
] as const)('Fisher exact: $name', ({ table, greater, twoSided }) => {
  const chances = fisherExact(table);
  expect(chances.greater / greater).toBeCloseTo(1, 8);
  expect(chances.twoSided / twoSided).toBeCloseTo(1, 8);
});

test('all chances of a draw sum to one, from the least to the most', () => {
  const { least, most, chances } = hypergeometric(20, 15, 12);
  expect([least, most, chances.length]).toEqual([7, 12, 6]);
  expect(chances.reduce((total, chance) => total + chance, 0)).toBeCloseTo(1, 12);
});

test('nothing to draw is certain', () => {
  expect(hypergeometric(0, 0, 0).chances).toEqual([1]);
  expect(companyTail(9, 9, 4, 4)).toBe(1);
  expect(companyTail(9, 2, 2, 3)).toBe(0);
});

test('counts that cannot be are a slip of the caller', () => {
  expect(() => hypergeometric(5, 6, 1)).toThrow(RangeError);
  expect(() => hypergeometric(5, 2.5, 1)).toThrow(RangeError);
  expect(() => fullSetTail(5, [], 1)).toThrow(RangeError);
  expect(() => fullSetTail(5, [6], 1)).toThrow(RangeError);
  expect(() => sharedByDeal(1, [1], 1)).toThrow(RangeError);
});

test('a set of one kind is in as many pits as it is in', () => {
  expect(fullSetTail(9, [4], 4).value).toBe(1);
  expect(fullSetTail(9, [4], 5).value).toBe(0);
});

test('a set of two kinds is the company of two', () => {
  expect(fullSetTail(12, [6, 5], 5).value).toBeCloseTo(companyTail(12, 6, 5, 5), 12);
});

test('two kinds in two of four pits each: one chance in six each that both lie in the first two', () => {
  expect(sharedByDeal(4, [2, 2], 2)).toBeCloseTo(1 / 36, 12);
  expect(sharedByDeal(4, [2, 2], 1)).toBeCloseTo(11 / 36, 12);
  expect(sharedByDeal(4, [2, 2], 0)).toBeCloseTo(1, 12);
});

test('two pits by Fisher: 8 kinds shared, 2 and 1 not, of 16', () => {
  expect(fisherOfPits({ both: 8, onlyFirst: 2, onlySecond: 1 }, 16).greater).toBeCloseTo(
    0.024475524475524476,
    12,
  );
  expect(() => fisherOfPits({ both: 8, onlyFirst: 2, onlySecond: 1 }, 10)).toThrow(RangeError);
});

test('ties counted half lie between the strict and the cautious chance', () => {
  const { greater, greaterMid } = fisherExact([[3, 1], [1, 3]]); // prettier-ignore
  expect(greater - greaterMid).toBeCloseTo(8 / 70, 12);
});
