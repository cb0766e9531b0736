import { describe, expect, test } from 'vitest';
import { score } from '../../../../shared/activities/index.ts';
import { dealFor, scoreClassPlay, scoreGathering } from '../../../../shared/activities/scorers.ts';
import { classOf, gatheringOf } from './barter-of.ts';

const WORLD = `world:
  aim: axe
  goods: { antler: , flint: , grain: , pot: , axe: }
  you:
    holds: { antler: 1 }
    wants: { antler: 1, grain: 3, flint: 4, pot: 5, axe: 9 }
    for-swapping: [grain, flint]
  traders:
    ama:
      holds: { flint: 1, grain: 1 }
      wants: { antler: 5, flint: 2, grain: 2 }
    bero:
      holds: { flint: 1, pot: 1 }
      wants: { grain: 4, flint: 3, pot: 1 }
    cale:
      holds: { axe: 1 }
      wants: { flint: 6, axe: 5, pot: 2 }`;

const swap = (give: string, to: string, take: string) => ({ with: to, give: [give], take: [take] });
const short = [swap('antler', 'ama', 'flint'), swap('flint', 'cale', 'axe')];
const long = [swap('antler', 'ama', 'grain'), swap('grain', 'bero', 'flint'), swap('flint', 'cale', 'axe')];

describe('a chain', () => {
  const activity = gatheringOf(WORLD, '7-9');
  const of = (swaps: typeof short) => scoreGathering(activity, { activity: activity.id, swaps });

  // By hand: antler for flint (1/2), then only the axe: 1. Antler for grain (1/2), then flint or pot (1/2 each); with flint
  // the axe or the pot (1/2 each): 2/3. The pot leads nowhere. 1/2 + 1/2 x 1/2 x 1/2 x 2/3 = 7/12.
  test('zero is what aimless swapping gets', () => {
    expect(activity.par).toBe(2);
    expect(activity.aimlessAverage).toBeCloseTo(0.583333333, 9);
  });

  test.each([
    { name: 'the shortest', swaps: short, share: 1, expected: 1 },
    { name: 'one swap longer', swaps: long, share: 0.666666667, expected: 0.2 },
    { name: 'none', swaps: [], share: 0, expected: -1.4 },
    { name: 'halfway', swaps: short.slice(0, 1), share: 0, expected: -1.4 },
    { name: 'a refused one first', swaps: [swap('antler', 'cale', 'axe'), ...short], share: 1, expected: 1 },
    { name: 'a refused one after', swaps: [...short, swap('axe', 'bero', 'pot')], share: 1, expected: 1 },
  ])('$name: $expected', ({ swaps, share, expected }) => {
    const { score: given, working } = of(swaps);
    expect(working.share).toBeCloseTo(share, 9);
    expect(given).toBeCloseTo(expected, 9);
  });
});

describe('a class', () => {
  const activity = classOf('class: { pupils: 12 }', '9-11');
  const { deal } = activity;
  const of = (play: object) => scoreClassPlay(activity, { activity: activity.id, ...play });

  test('hands for each gain are the same as what each ended with', () => {
    const ends = deal.takesFrom.map((number) => deal.cards[number - 1]?.holds ?? '');
    const gains: Record<string, number> = {};
    for (const [index, card] of deal.cards.entries()) {
      const gain = (card.wants[ends[index] ?? '']?.[0] ?? 0) - (card.wants[card.holds]?.[0] ?? 0);
      gains[gain] = (gains[gain] ?? 0) + 1;
    }
    expect(of({ ends }).score).toBe(1);
    expect(of({ gains }).score).toBe(1);
    expect(of({ gains }).working).toEqual(of({ ends }).working);
  });

  test.each([
    { name: 'nothing keyed in', play: {}, why: 'nothing-told' },
    { name: 'no hands', play: { gains: { 3: 0 } }, why: 'nothing-told' },
    { name: 'more hands than pupils', play: { gains: { 1: 13 } }, why: 'more-than-pupils' },
    { name: 'more than the cards allow', play: { gains: { 40: 12 } }, why: 'more-than-possible' },
    { name: 'a gain that is no number', play: { gains: { lots: 12 } }, why: 'more-than-possible' },
    {
      name: 'things that were not dealt',
      play: { ends: Array.from({ length: 12 }, () => 'axe') },
      why: 'not-what-was-dealt',
    },
    { name: 'too small a class', play: { pupils: 3, gains: { 1: 2 } }, why: 'class-unfit' },
  ])('$name: no score, and why', ({ play, why }) => {
    expect(of(play)).toEqual({ score: null, guess: null, working: { why } });
  });

  test('another size is dealt alike wherever it is scored', () => {
    const other = dealFor(activity, 17);
    expect(dealFor(activity, 17)).toEqual(other);
    const gains = { 1: 17 };
    const scored = score(activity, { activity: activity.id, pupils: 17, gains });
    expect(scored.working['total']).toBe(17);
    expect(scored.working['bestTotal']).toBe(other.bestTotal);
    expect(scored.guess).toBe(other.aimlessShare);
  });
});
