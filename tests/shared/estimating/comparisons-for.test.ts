import { readFileSync } from 'node:fs';
import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { comparisonsFor, nearestChoice, scoreChoice } from '../../../shared/estimating/index.ts';
import { readComparisons } from '../../../shared/library/read-comparisons.ts';
import { reckon, small } from '../../reference/making/model.ts';

const text = readFileSync(new URL('../../../content/figures/comparisons.yaml', import.meta.url), 'utf8');
const candidates = (readComparisons('comparisons.yaml', text).value ?? []).map(({ id, hours }) => ({
  id,
  amount: hours,
}));

test('a whole axe among four: no two alike, the nearest at the place asked', () => {
  const hours = reckon('axe-hours', small).middle;
  const low = comparisonsFor(candidates, hours, 4, 1).value;
  expect(low?.map(({ id }) => id)).toEqual(['school-day', 'day-and-night', 'week', 'school-year']);
  const high = comparisonsFor(candidates, hours, 4, 2).value;
  expect(high?.map(({ id }) => id)).toEqual(['football', 'school-day', 'day-and-night', 'week']);
});

test('wherever it can be asked, the nearest stands at its place, the rest rise by 2.5 or more, and it can be scored', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.02, max: 1500, noNaN: true }),
      fc.constantFrom([2, 0], [2, 1], [3, 0], [3, 2], [4, 1], [4, 2], [5, 1], [5, 3]),
      (amount, [count = 2, place = 0]) => {
        const chosen = comparisonsFor(candidates, amount, count, place).value;
        if (chosen === null) return;
        const amounts = chosen.map((comparison) => comparison.amount);
        expect(amounts.length).toBe(count);
        expect(nearestChoice(amounts, amount)).toBe(place);
        amounts
          .slice(1)
          .forEach((next, index) =>
            expect(next / (amounts[index] ?? Number.NaN)).toBeGreaterThanOrEqual(2.5),
          );
        expect(scoreChoice(place, place, amounts).value?.score).toBe(1);
      },
    ),
  );
});

test('what cannot be: too few far enough away, the middle of an odd list, a place beyond it', () => {
  expect(comparisonsFor(candidates, 0.03, 4, 2)).toEqual({ value: null, why: 'too-few-comparisons' });
  expect(comparisonsFor([], 1, 2, 0)).toEqual({ value: null, why: 'too-few-comparisons' });
  expect(() => comparisonsFor(candidates, 26, 3, 1)).toThrow(RangeError);
  expect(() => comparisonsFor(candidates, 26, 4, 4)).toThrow(RangeError);
});

test('the file of comparisons rises, or says where it does not', () => {
  expect(readComparisons('c.yaml', text).problems).toEqual([]);
  const fallen = readComparisons('c.yaml', text.replace('hours: 0.25', 'hours: 0.1'));
  expect(fallen.value).toBeNull();
  expect(fallen.problems.map(({ code, from }) => ({ code, line: from.line }))).toEqual([
    { code: 'value-unfit', line: 9 },
  ]);
  expect(readComparisons('c.yaml', text.replace('id: story', 'id: teeth')).problems[0]?.code).toBe(
    'key-repeated',
  );
});
