import { expect, test } from 'vitest';
import { derive, pick, shuffle, stream, uniform, uniformBelow } from '../../../shared/chance/index.ts';
import { xoshiro128 } from '../../../shared/chance/xoshiro.ts';

test('the same seed gives the same words; another seed, or another name, others', () => {
  const words = (seed: string): readonly number[] => Array.from({ length: 5 }, stream(seed).next);
  expect(words('P3')).toEqual(words('P3'));
  expect(words('P3')).not.toEqual(words('P4'));
  const named = (name: string): number => derive(stream('P3'), name).next();
  expect(named('sort-1')).toBe(named('sort-1'));
  expect(named('sort-1')).not.toBe(named('sort-2'));
});

test('what is drawn from a stream changes nothing in one derived from it', () => {
  const parent = stream('P3');
  const before = derive(parent, 'sort-1').next();
  parent.next();
  expect(derive(parent, 'sort-1').next()).toBe(before);
});

test('words are whole numbers from 0 to 2^32 - 1, and both halves are reached', () => {
  const chance = stream('words');
  const words = Array.from({ length: 10_000 }, chance.next);
  expect(words.every((word) => Number.isInteger(word) && word >= 0 && word < 2 ** 32)).toBe(true);
  expect(words.filter((word) => word >= 2 ** 31).length / words.length).toBeCloseTo(0.5, 1);
});

test('numbers below a bound are each as likely (chi-square, 6 degrees of freedom, 0.999: 22.458, scipy)', () => {
  const chance = stream('die');
  const counts = Array.from({ length: 7 }, () => 0);
  for (let throws = 0; throws < 7000; throws += 1) {
    const face = uniformBelow(chance, 7);
    counts[face] = (counts[face] ?? 0) + 1;
  }
  expect(counts.reduce((total, count) => total + (count - 1000) ** 2 / 1000, 0)).toBeLessThan(22.458);
});

test('a word beyond the last full multiple is drawn again', () => {
  const words = [2 ** 32 - 1, 5];
  // 2^32 leaves 1 when shared by 3, so the highest word is not used.
  expect(uniformBelow({ next: () => words.shift() ?? 0 }, 3)).toBe(2);
  expect(words).toEqual([]);
});

test.each([0, -1, 1.5, Number.NaN, 2 ** 32 + 1])('a bound of %s is ours to mend, so it throws', (bound) => {
  expect(() => uniformBelow(stream('1'), bound)).toThrow(RangeError);
});

test('the greatest bound and the least are allowed', () => {
  expect(uniformBelow({ next: () => 2 ** 32 - 1 }, 2 ** 32)).toBe(2 ** 32 - 1);
  expect(uniformBelow(stream('1'), 1)).toBe(0);
});

test('a share lies from 0 to below 1', () => {
  expect(uniform({ next: () => 0 })).toBe(0);
  expect(uniform({ next: () => 2 ** 32 - 1 })).toBeLessThan(1);
});

test('a shuffle keeps every item and leaves its list as it was', () => {
  const items = ['a', 'b', 'c', 'd', 'e'];
  expect(shuffle(stream('1'), items).toSorted()).toEqual(['a', 'b', 'c', 'd', 'e']);
  expect(items).toEqual(['a', 'b', 'c', 'd', 'e']);
  expect(shuffle(stream('1'), [])).toEqual([]);
});

test('nothing can be picked from nothing', () => {
  expect(() => pick(stream('1'), [])).toThrow(RangeError);
});

test('a state of four zeros never leaves zero, so it is refused', () => {
  expect(() => xoshiro128([0, 0, 0, 0])).toThrow(RangeError);
});
