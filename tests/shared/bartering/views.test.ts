import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  cobbDouglasExchange,
  fallOff,
  isIndividuallyRational,
  isParetoImprovement,
  shortestSwapChain,
  GATHERING_GOODS,
  RULES,
  topTradingCycles,
} from '../../../shared/bartering/index.ts';

describe('top trading cycles', () => {
  test('nobody ends with less than their own, by their own list', () => {
    const lists = fc.integer({ min: 1, max: 9 }).chain((size) => {
      const ids = Array.from({ length: size }, (_, index) => `t${index}`);
      return fc.tuple(
        ...ids.map((id) =>
          fc
            .shuffledSubarray(ids.filter((other) => other !== id))
            .map((others) => [id, [...others, id]] as const),
        ),
      );
    });
    fc.assert(
      fc.property(lists, (entries) => {
        const preferences = Object.fromEntries(entries);
        const { allocation, rounds } = topTradingCycles(preferences);
        expect(new Set(Object.values(allocation)).size).toBe(entries.length);
        expect(rounds.flat(2)).toHaveLength(entries.length);
        for (const [id, list] of entries) expect(list).toContain(allocation[id]);
        // No two could both do better by swapping what they ended with.
        const rank = (who: string, thing: string): number =>
          (preferences[who]?.indexOf(thing) ?? -1) + 1 || Infinity;
        for (const [one] of entries) {
          for (const [other] of entries) {
            const mine = allocation[one] ?? '';
            const theirs = allocation[other] ?? '';
            expect(rank(one, theirs) < rank(one, mine) && rank(other, mine) < rank(other, theirs)).toBe(
              false,
            );
          }
        }
      }),
      { seed: 6, numRuns: 200 },
    );
  });

  test.each([
    { name: 'a list not ending with one’s own', preferences: { a: ['a', 'b'], b: ['b'] } },
    { name: 'one named twice', preferences: { a: ['b', 'b', 'a'], b: ['b'] } },
    { name: 'someone not here', preferences: { a: ['c', 'a'] } },
  ])('$name is refused', ({ preferences }) => {
    expect(() => topTradingCycles(preferences)).toThrow(RangeError);
  });
});

test.each([
  {
    name: 'one better, one the same',
    people: [
      { before: 1, after: 2 },
      { before: 3, after: 3 },
    ],
    rational: true,
    pareto: true,
  },
  { name: 'nobody changed', people: [{ before: 1, after: 1 }], rational: true, pareto: false },
  {
    name: 'one worse',
    people: [
      { before: 1, after: 9 },
      { before: 3, after: 2 },
    ],
    rational: false,
    pareto: false,
  },
  { name: 'nobody at all', people: [], rational: true, pareto: false },
])('$name', ({ people, rational, pareto }) => {
  expect(isIndividuallyRational(people)).toBe(rational);
  expect(isParetoImprovement(people)).toBe(pareto);
});

describe('two traders with fixed shares', () => {
  test('what there was is shared out, and neither is worse off', () => {
    const amount = fc.double({ min: 0.1, max: 50, noNaN: true });
    const share = fc.double({ min: 0.05, max: 0.95, noNaN: true });
    fc.assert(
      fc.property(share, share, amount, amount, amount, amount, (a, b, a1, a2, b1, b2) => {
        const settled = cobbDouglasExchange({
          A: { share1: a, endowment: [a1, a2] },
          B: { share1: b, endowment: [b1, b2] },
        });
        if (settled.priceRatio === null) throw new Error('a rate exists for all of these');
        expect(settled.A[0] + settled.B[0]).toBeCloseTo(a1 + b1, 6);
        expect(settled.A[1] + settled.B[1]).toBeCloseTo(a2 + b2, 6);
        const pleasure = (part: number, [first, second]: readonly [number, number]): number =>
          part * Math.log(first) + (1 - part) * Math.log(second);
        expect(pleasure(a, settled.A)).toBeGreaterThanOrEqual(pleasure(a, [a1, a2]) - 1e-9);
        expect(pleasure(b, settled.B)).toBeGreaterThanOrEqual(pleasure(b, [b1, b2]) - 1e-9);
      }),
      { seed: 6, numRuns: 200 },
    );
  });

  test('no rate where nothing is offered for good 2, and none of 0', () => {
    expect(
      cobbDouglasExchange({ A: { share1: 1, endowment: [5, 0] }, B: { share1: 0.5, endowment: [0, 5] } }),
    ).toEqual({ priceRatio: null, why: 'no-price' });
    expect(
      cobbDouglasExchange({ A: { share1: 0, endowment: [5, 5] }, B: { share1: 0, endowment: [5, 5] } }),
    ).toEqual({ priceRatio: null, why: 'price-zero' });
    expect(() =>
      cobbDouglasExchange({ A: { share1: 2, endowment: [5, 5] }, B: { share1: 0, endowment: [5, 5] } }),
    ).toThrow(RangeError);
  });
});

// Half kept at each hand-over: 1, 1/2, 1/4, 1/8. Four fifths: the logarithm falls by ln 1.25 = 0.223144 each time.
test('passing down the line halves each time and is straight in logarithms', () => {
  expect(fallOff(0.5, 3).map(({ share }) => share)).toEqual([1, 0.5, 0.25, 0.125]);
  expect(fallOff(0.8, 3).map(({ logShare }) => Number(logShare?.toFixed(6)))).toEqual([
    0, -0.223144, -0.446287, -0.669431,
  ]);
  expect(fallOff(0, 1)).toEqual([
    { handovers: 0, share: 1, logShare: 0 },
    { handovers: 1, share: 0, logShare: null },
  ]);
  expect(() => fallOff(1.1, 1)).toThrow(RangeError);
  expect(() => fallOff(0.5, -1)).toThrow(RangeError);
});

test('standing offers: two chains as short are counted, and the start may be the goal', () => {
  const offers = [
    { give: 'a', get: 'b' },
    { give: 'a', get: 'c' },
    { give: 'b', get: 'd' },
    { give: 'c', get: 'd' },
    { give: 'c', get: 'd' },
  ];
  expect(shortestSwapChain(offers, 'a', 'd')).toEqual({ par: 2, ways: 2, chain: ['a', 'b', 'd'] });
  expect(shortestSwapChain(offers, 'a', 'a')).toEqual({ par: 0, ways: 1, chain: ['a'] });
});

test('every rule of the gathering has a source or says that it is ours', () => {
  expect(new Set(RULES.map(({ id }) => id)).size).toBe(RULES.length);
  for (const { status, source } of RULES) expect(status === 'ASM').toBe(source === "this game's own rule");
});

test('every good with hours says where they come from', () => {
  for (const { hours } of GATHERING_GOODS) {
    if (hours === null) continue;
    expect(hours.source.length).toBeGreaterThan(10);
    expect(hours.low ?? hours.value).toBeLessThanOrEqual(hours.value);
    expect(hours.high ?? hours.value).toBeGreaterThanOrEqual(hours.value);
  }
});
