import { describe, expect, test } from 'vitest';
import {
  coincidencesOf,
  goBetweens,
  hoursView,
  prove,
  scoreChain,
  shorterChain,
  unseenRings,
} from '../../../shared/bartering/index.ts';
import { give, smallWorld } from './worlds.ts';

const short = [give('antler', 'ama', 'flint'), give('flint', 'cale', 'axe')];
const long = [give('antler', 'ama', 'grain'), give('grain', 'bero', 'flint'), give('flint', 'cale', 'axe')];
const stuck = [give('antler', 'ama', 'grain'), give('grain', 'bero', 'pot')];

describe('the small world, gone through by hand', () => {
  // Antler goes to Ama for flint or grain. That flint goes to Cale for the axe: home in two. The grain goes to Bero for the
  // pot (stuck) or for flint, and that flint to Cale (home in three) or back to Bero for the pot (stuck).
  // Aimless: 1/2 home in two, 1/8 home in three, 3/8 stuck: 1/2 + 1/8 * 2/3 = 7/12.
  test('par, chains, dead ends and what aimless swapping gets', () => {
    const proof = prove(smallWorld);
    expect(proof).toMatchObject({
      solvable: true,
      par: 2,
      chains: 1,
      isComplete: true,
      deadEnds: { count: 1, withoutWayBack: 0 },
    });
    expect(proof.example).toEqual(short);
    expect(proof.aimless?.average).toBeCloseTo(7 / 12, 12);
    expect(proof.aimless?.reachesAim).toBeCloseTo(0.625, 12);
    expect(proof.difficultyBits).toBeCloseTo(1, 12);
    expect(proof.betterOff).toEqual([
      { trader: 'you', gain: 8 },
      { trader: 'ama', gain: 3 },
      { trader: 'cale', gain: 1 },
    ]);
  });

  // (share - 7/12) / (5/12): 2/3 gives 0.2, 0 gives -1.4.
  const standard = { par: 2, aimlessAverage: 7 / 12 };
  test.each([
    { name: 'par', play: short, expected: 1 },
    { name: 'one more than par', play: long, expected: 0.2 },
    { name: 'keeping what one has', play: [], expected: -1.4 },
    { name: 'swapping without an aim', play: stuck, expected: -1.4 },
    { name: 'half-way', play: [give('antler', 'ama', 'flint')], expected: -1.4 },
    {
      name: 'a swap that was refused does not count',
      play: [give('antler', 'cale', 'axe'), ...short],
      expected: 1,
    },
  ])('$name scores $expected', ({ play, expected }) => {
    expect(scoreChain(smallWorld, standard, play).score).toBeCloseTo(expected, 12);
  });

  test('swapping on after the aim gains nothing', () => {
    const world = {
      ...smallWorld,
      traders: smallWorld.traders.map((trader) =>
        trader.id === 'bero' ? { ...trader, wants: { antler: [2], pot: [1] } } : trader,
      ),
      pupil: {
        ...smallWorld.pupil,
        holds: { antler: 2 },
        wants: { ...smallWorld.pupil.wants, antler: [1, 1] },
      },
    };
    const on = [...short, give('antler', 'bero', 'pot')];
    expect(scoreChain(world, standard, on).working).toMatchObject({ handovers: 3, reached: true });
    expect(scoreChain(world, standard, on).score ?? 1).toBeLessThan(
      scoreChain(world, standard, short).score ?? 0,
    );
  });

  test('where aimless play always makes par there is no score', () => {
    expect(scoreChain(smallWorld, { par: 2, aimlessAverage: 1 }, short).score).toBeNull();
  });

  test('a shorter chain keeps what it can of the pupil’s own', () => {
    expect(shorterChain(smallWorld, short)).toBeNull();
    expect(shorterChain(smallWorld, long)).toEqual({ chain: short, keeps: 0 });
    expect(shorterChain(smallWorld, stuck)).toEqual({ chain: long, keeps: 1 });
    expect(shorterChain(smallWorld, [])).toEqual({ chain: short, keeps: 0 });
  });

  test('the go-between is what was taken only to swap on', () => {
    expect(goBetweens(smallWorld, long)).toEqual(
      [
        { good: 'grain', taken: 2, notForItself: 1, share: 0.5 },
        { good: 'flint', taken: 2, notForItself: 1, share: 0.5 },
        { good: 'antler', taken: 1, notForItself: 0, share: 0 },
        { good: 'axe', taken: 1, notForItself: 0, share: 0 },
      ].sort((a, b) => b.share - a.share || (a.good < b.good ? -1 : 1)),
    );
  });

  // Antler 1 h for flint 2 h, flint 2 h for an axe of 26 h; the hours in grain are not known.
  test('by hours, and null where hours are not known', () => {
    expect(hoursView(smallWorld, short).balances).toEqual([
      { trader: 'you', hours: 25 },
      { trader: 'ama', hours: -1 },
      { trader: 'cale', hours: -24 },
    ]);
    const view = hoursView(smallWorld, long);
    expect(view.handovers.map(({ unknown }) => unknown)).toEqual([['grain'], ['grain'], []]);
    expect(view.balances.find(({ trader }) => trader === 'you')?.hours).toBeNull();
    expect(view.balances.find(({ trader }) => trader === 'cale')?.hours).toBe(-24);
  });

  // Ama wants the antler, you want her flint: straight. You want the pot, Bero wants the antler: straight. You want the axe,
  // Cale wants nothing of yours: one-sided. Ama and Bero: Bero wants grain, Ama holds all she wants: one-sided.
  // Cale wants flint of Ama, who wants nothing of his: one-sided. Cale and Bero: the same.
  test('how often wants meet: two straight, four one-sided of six', () => {
    expect(coincidencesOf(smallWorld)).toEqual({ pairs: 6, straight: 2, oneSided: 4 });
  });

  // You would miss the antler least, Ama flint (2, before grain at 2), Bero the pot, Cale has only the axe. You want the axe
  // most, Cale wants flint for it (6 against 5), Ama wants the antler (5 against 2): a ring of three that nobody asked for.
  test('a ring that helps three at once, none of whom could swap straight with the next', () => {
    expect(unseenRings(smallWorld, [])).toEqual([
      [
        { trader: 'you', takes: 'axe', from: 'cale', gain: 8 },
        { trader: 'cale', takes: 'flint', from: 'ama', gain: 1 },
        { trader: 'ama', takes: 'antler', from: 'you', gain: 3 },
      ],
    ]);
    expect(unseenRings(smallWorld, short)).toEqual([]);
  });
});
