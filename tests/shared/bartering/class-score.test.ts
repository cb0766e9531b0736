import { describe, expect, test } from 'vitest';
import { stream } from '../../../shared/chance/index.ts';
import {
  aimlessClassShare,
  aimlessEnd,
  deal,
  scoreClass,
  type Card,
} from '../../../shared/bartering/index.ts';

const GOODS = [
  'hide',
  'flint',
  'pot',
  'nuts',
  'axe',
  'cord',
  'antler',
  'basket',
  'pick',
  'grain',
  'bowl',
  'mat',
];

/** By hand: 1 and 2 can swap straight (gains 2 + 2), and so can 1 and 3 (gains 4 + 3); whoever is left keeps their own. */
const three: Card[] = [
  { number: 1, holds: 'hide', wants: { hide: [1], pot: [3], axe: [5] } },
  { number: 2, holds: 'pot', wants: { pot: [1], hide: [3] } },
  { number: 3, holds: 'axe', wants: { axe: [1], hide: [4] } },
];

describe('three cards by hand', () => {
  // Two ends, as likely: 1 with 2 (4 in all; then 1 with the pot has nothing 3 wants), or 1 with 3 (7). Best 7; mean 5.5 / 7.
  const guess = 5.5 / 7;

  test('what aimless swapping gets', () => {
    expect(Math.abs(aimlessClassShare(three, 7) - guess)).toBeLessThan(0.03);
  });

  test.each([
    { name: 'the best', ends: ['axe', 'pot', 'hide'], expected: 1, betterOff: 2 },
    { name: 'the lesser swap', ends: ['pot', 'hide', 'axe'], expected: -1, betterOff: 2 },
    { name: 'nobody swapped', ends: ['hide', 'pot', 'axe'], expected: -11 / 3, betterOff: 0 },
  ])('$name', ({ ends, expected, betterOff }) => {
    const scored = scoreClass(three, ends, guess);
    expect(scored.score).toBeCloseTo(expected, 9);
    expect(scored.working).toMatchObject({ bestTotal: 7, betterOff, worseOff: 0 });
  });

  test('goods made or lost are a mistake of ours', () => {
    expect(() => scoreClass(three, ['axe', 'axe', 'hide'], guess)).toThrow(RangeError);
  });

  test('one who gave too much away is counted as worse off', () => {
    expect(scoreClass(three, ['axe', 'hide', 'pot'], guess).working).toMatchObject({
      total: 4 + 2 - 1,
      worseOff: 1,
    });
  });
});

test('aimless classes average 0 within 0.03, and the best scores 1', () => {
  const rows = Array.from({ length: 24 }, (_, index) => {
    const pupils = 12 + index;
    const dealt = deal(
      { pupils, band: index % 2 === 0 ? '7-9' : '11-14', goods: GOODS },
      stream(`class-${index}`),
    );
    const guess = aimlessClassShare(dealt.cards, dealt.bestTotal);
    const best = dealt.takesFrom.map((number) => dealt.cards[number - 1]?.holds ?? '');
    expect(scoreClass(dealt.cards, best, guess).score).toBeCloseTo(1, 9);
    const plays = Array.from({ length: 80 }, (_, play) =>
      aimlessEnd(dealt.cards, stream(`play-${index}-${play}`)),
    );
    return plays.map((ends) => scoreClass(dealt.cards, ends, guess).score ?? Number.NaN);
  }).flat();
  expect(Math.abs(rows.reduce((a, b) => a + b, 0) / rows.length)).toBeLessThan(0.03);
});
