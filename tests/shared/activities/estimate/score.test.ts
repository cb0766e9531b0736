import { describe, expect, test } from 'vitest';
import { guessPlay, recordPlay, score, type ActivityOf } from '../../../../shared/activities/index.ts';
import { stream } from '../../../../shared/chance/index.ts';
import { estimated } from './compiled.ts';

const AXE = 'of: axe-hours\nfor: { find: P7-165, length-mm: 150 }';

/** An axe whose record is made up of round numbers, so that scores can be worked out by hand. */
const byHand: ActivityOf<'estimate'> = {
  ...estimated(AXE, '[9-11]'),
  line: { from: 2, to: 2048 },
  record: {
    low: 4,
    lowerQuarter: 8,
    middle: 11.3,
    upperQuarter: 16,
    high: 32,
    status: 'ASM',
    without: [],
  },
  choices: [1, 4, 16, 64].map((hours) => ({
    id: `c${hours}`,
    label: `${hours} hours`,
    hours,
    status: 'ASM',
    source: 'test',
  })),
};
const scoreOf = (play: object): number | null => score(byHand, { activity: byHand.id, ...play }).score;

describe('by hand: the line from 2 to 2,048 has its middle at 64, two doublings above 8 to 16', () => {
  test.each([
    { name: 'inside the likeliest half', play: { number: 10 }, expected: 1 },
    { name: 'one doubling above', play: { number: 32 }, expected: 0.5 },
    { name: 'one doubling below', play: { number: 4 }, expected: 0.5 },
    { name: 'the middle of the line', play: { number: 64 }, expected: 0 },
    { name: 'four doublings above', play: { number: 256 }, expected: -1 },
    { name: 'a class: one right, one at the middle', play: { numbers: [10, 64] }, expected: 0.5 },
    // 16 is nearest to 11.3; its mirror image among four is 4, two doublings off, so one doubling is at stake.
    { name: 'the nearest comparison', play: { choice: 'c16' }, expected: 1 },
    { name: 'its mirror image', play: { choice: 'c4' }, expected: -1 },
    { name: 'hands half and half', play: { hands: { c16: 9, c4: 9 } }, expected: 0 },
    { name: 'hands three to one', play: { hands: { c16: 3, c4: 1 } }, expected: 0.5 },
    // Stretches 2–5, 5–10, 10–20…: their middles by ratio are √10, √50, √200, the second of them below the half by 0.178.
    { name: 'hands in a stretch', play: { bins: [0, 0, 6] }, expected: 1 },
    { name: 'a comparison that is not there', play: { choice: 'c5' }, expected: null },
    { name: 'a least above the most', play: { interval: { lower: 20, upper: 10 } }, expected: null },
    { name: 'no hand', play: { hands: { c16: 0 } }, expected: null },
    { name: 'nothing', play: {}, expected: null },
  ])('$name', ({ play, expected }) => {
    const got = scoreOf(play);
    if (expected === null) expect(got).toBeNull();
    else expect(got).toBeCloseTo(expected, 9);
  });

  test('a null score says why', () => {
    expect(score(byHand, { activity: byHand.id }).working).toEqual({ how: 'nothing', why: 'no-values' });
  });

  test('a class: its middle against its best guess', () => {
    const { working } = score(byHand, { activity: byHand.id, numbers: [2, 4, 32, 64, 128] });
    expect(working).toMatchObject({
      how: 'numbers',
      crowd: {
        median: 32,
        mean: 46,
        bestGuess: 4,
        bestDoublingsOff: 1,
        nearerThanMedian: 0,
        asNearAsMedian: 2,
      },
    });
  });
});

const DEMO = [
  ['choose', 'of: knapping-minutes\nfor: { find: P7-165, length-mm: 150 }\nask: choose'],
  ['number', 'of: grinding-hours\nfor: { find: P7-165, length-mm: 150 }\nask: number'],
  ['interval', `${AXE}\nask: interval`],
] as const;

describe.each(DEMO)('asked to %s, over many seeds', (_, block) => {
  const activities = Array.from({ length: 60 }, (_each, seed) => estimated(block, '[9-11]', `${seed}`));
  const averageOf = (playOf: (activity: ActivityOf<'estimate'>) => object): number =>
    activities.reduce(
      (sum, activity) => sum + (score(activity, { activity: activity.id, ...playOf(activity) }).score ?? 0),
      0,
    ) / activities.length;

  test('the record scores 1', () => {
    expect(averageOf((activity) => recordPlay(activity))).toBeCloseTo(1, 9);
  });

  test('guessing averages 0', () => {
    const scores = activities.flatMap((activity, index) =>
      Array.from(
        { length: 60 },
        (_each, draw) => score(activity, guessPlay(activity, stream(`${index}/${draw}`))).score ?? Number.NaN,
      ),
    );
    expect(Math.abs(scores.reduce((sum, each) => sum + each, 0) / scores.length)).toBeLessThan(0.02);
  });

  test('the middle of the line, the whole line and the same place always gain nothing', () => {
    const middle = ({ line }: ActivityOf<'estimate'>): number => Math.sqrt(line.from * line.to);
    const plays: readonly ((activity: ActivityOf<'estimate'>) => object)[] = [
      (activity) => ({ number: middle(activity) }),
      (activity) => ({ interval: { lower: middle(activity), upper: middle(activity) } }),
      ({ line }) => ({ interval: { lower: line.from, upper: line.to } }),
      ...[0, 1, 2, 3].map((place) => ({ choices }: ActivityOf<'estimate'>) => ({
        choice: choices[place]?.id ?? 'none',
      })),
    ];
    // Sides are drawn by chance: the same place may gain a little over sixty draws, never much.
    for (const play of plays) expect(averageOf(play)).toBeLessThan(0.2);
    expect(averageOf((activity) => ({ number: middle(activity) }))).toBeCloseTo(0, 9);
  });
});
