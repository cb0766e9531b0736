import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { nearestChoice, scoreChoice } from '../../../shared/estimating/index.ts';

// Hours: a story, a school day, a weekend awake, a school week of days and nights.
const hours = [0.25, 6, 32, 120];

test('the record’s comparison scores 1, its neighbour more than the far end', () => {
  expect(scoreChoice(3, 3, hours).value?.score).toBe(1);
  const next = scoreChoice(2, 3, hours).value?.score ?? Number.NaN;
  const far = scoreChoice(0, 3, hours).value?.score ?? Number.NaN;
  expect(next).toBeCloseTo(0.57182, 4); // 1 − log2(120/32) / (log2(120/0.25)/2), by hand
  expect(far).toBeCloseTo(-1, 9);
});

const lists = fc
  .array(fc.double({ min: 1.5, max: 20, noNaN: true }), { minLength: 2, maxLength: 7 })
  .map((ratios) => ratios.reduce<number[]>((list, ratio) => [...list, (list.at(-1) ?? 0.1) * ratio], []));

test('always the same choice averages at most 0 over a record and its mirror image; so does every blind one', () => {
  fc.assert(
    fc.property(lists, fc.nat(), fc.nat(), (amounts, recordSeed, choiceSeed) => {
      const record = recordSeed % amounts.length;
      const chosen = choiceSeed % amounts.length;
      const image = amounts.length - 1 - record;
      if (image === record) return;
      const here = scoreChoice(chosen, record, amounts).value?.score ?? Number.NaN;
      const there = scoreChoice(chosen, image, amounts).value?.score ?? Number.NaN;
      expect((here + there) / 2).toBeLessThanOrEqual(1e-9);
    }),
  );
});

test('guessing between the record and its mirror image averages exactly 0', () => {
  const right = scoreChoice(1, 1, hours).value?.score ?? Number.NaN;
  const wrong = scoreChoice(2, 1, hours).value?.score ?? Number.NaN;
  expect((right + wrong) / 2).toBeCloseTo(0, 9);
});

test('the middle of an odd list cannot be scored', () => {
  expect(scoreChoice(1, 1, [1, 10, 100])).toEqual({ value: null, why: 'middle-is-right' });
});

test('the nearest comparison is nearest by ratio', () => {
  expect(nearestChoice(hours, 13)).toBe(1); // 13/6 = 2.17, 32/13 = 2.46
  expect(nearestChoice(hours, 15)).toBe(2); // 15/6 = 2.5, 32/15 = 2.13
  expect(() => nearestChoice([], 3)).toThrow(RangeError);
  expect(() => scoreChoice(4, 0, hours)).toThrow(RangeError);
});
