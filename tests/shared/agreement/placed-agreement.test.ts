import { array, assert, integer, property } from 'fast-check';
import { expect, test } from 'vitest';
import {
  cohenKappa,
  placedAgreement,
  weightedKappa,
  type PlacedItem,
} from '../../../shared/agreement/index.ts';

const SEED = 20261125;
const CATEGORIES = 4;

const pairs = array(array(integer({ min: 0, max: CATEGORIES - 1 }), { minLength: 2, maxLength: 2 }), {
  minLength: 1,
  maxLength: 20,
});

/** A square table of how often home and choice met. */
function tableOf(met: readonly (readonly number[])[]): number[][] {
  const table = Array.from({ length: CATEGORIES }, () => Array.from({ length: CATEGORIES }, () => 0));
  for (const [home = 0, choice = 0] of met) {
    const row = table[home];
    if (row !== undefined) row[choice] = (row[choice] ?? 0) + 1;
  }
  return table;
}

test('with one home for each item it is Cohen’s kappa', () => {
  assert(
    property(pairs, (met) => {
      const items = met.map(([home, choice]): PlacedItem => ({
        agreement: { [`${home}`]: 1 },
        chosen: { [`${choice}`]: 1 },
      }));
      const kappa = cohenKappa(tableOf(met)).value;
      const { score } = placedAgreement(items);
      if (kappa === null) expect(score).toBeNull();
      else expect(score).toBeCloseTo(kappa, 9);
    }),
    { seed: SEED, numRuns: 1000 },
  );
});

test('with agreement falling by equal steps it is weighted kappa with linear weights', () => {
  const weights = Array.from({ length: CATEGORIES }, (_, row) =>
    Array.from({ length: CATEGORIES }, (__, column) => Math.abs(row - column)),
  );
  assert(
    property(pairs, (met) => {
      const items = met.map(([home = 0, choice]): PlacedItem => ({
        agreement: Object.fromEntries(
          Array.from({ length: CATEGORIES }, (_, tray) => [
            `${tray}`,
            1 - Math.abs(tray - home) / (CATEGORIES - 1),
          ]),
        ),
        chosen: { [`${choice}`]: 1 },
      }));
      const kappa = weightedKappa(tableOf(met), weights).value;
      const { score } = placedAgreement(items);
      if (kappa === null) expect(score).toBeNull();
      else expect(score).toBeCloseTo(kappa, 9);
    }),
    { seed: SEED, numRuns: 1000 },
  );
});

/** Every order of a list, by the first of it going before each order of the rest. */
function orders<Item>(items: readonly Item[]): readonly (readonly Item[])[] {
  if (items.length < 2) return [items];
  return items.flatMap((first, index) => orders(items.toSpliced(index, 1)).map((rest) => [first, ...rest]));
}

test.each([
  { name: 'one home each', homes: [['a'], ['a'], ['b'], ['b'], ['c']], choices: ['a', 'b', 'b', 'c', 'a'] },
  { name: 'two homes for one', homes: [['a'], ['a', 'b'], ['b'], ['c']], choices: ['a', 'b', 'b', 'c'] },
  {
    name: 'homes for all in one',
    homes: [['a', 'b'], ['a', 'c'], ['a'], ['a', 'b', 'c']],
    choices: ['a', 'b', 'c', 'c'],
  },
  {
    name: 'a find left in the pit',
    homes: [['a'], ['b'], ['b'], ['c', 'a']],
    choices: ['a', 'b', null, 'c'],
  },
  {
    name: 'two left in the pit',
    homes: [['a'], ['b'], ['b'], ['c', 'a'], ['c']],
    choices: ['a', null, 'b', null, 'c'],
  },
])('the same choices dealt in every order average exactly 0: $name', ({ homes, choices }) => {
  const scores = orders(choices).map(
    (dealt) =>
      placedAgreement(
        homes.map((home, index) => {
          const choice = dealt[index] ?? null;
          return {
            agreement: Object.fromEntries(home.map((tray) => [tray, 1])),
            chosen: choice === null ? {} : { [choice]: 1 },
          };
        }),
      ).score ?? Number.NaN,
  );
  expect(scores.reduce((total, score) => total + score, 0) / scores.length).toBeCloseTo(0, 12);
});

const item = (homes: readonly string[], chosen: Readonly<Record<string, number>>): PlacedItem => ({
  agreement: Object.fromEntries(homes.map((home) => [home, 1])),
  chosen,
});

test.each(['a', 'b', 'c'])('a tray that takes everything (%s) scores 0, whatever homes there are', (tray) => {
  const homes = [['a'], ['b'], ['b', 'c'], ['c'], ['a']];
  expect(placedAgreement(homes.map((home) => item(home, { [tray]: 1 }))).score).toBeCloseTo(0, 12);
});

test.each([
  { name: 'nothing', items: [], score: null },
  { name: 'nothing placed', items: [item(['a'], {}), item(['b'], {})], score: null },
  { name: 'hands that nobody raised', items: [item(['a'], { a: 0 }), item(['b'], { b: 0 })], score: null },
  {
    name: 'one home for all, and all at home',
    items: [item(['a'], { a: 1 }), item(['a'], { a: 1 })],
    score: null,
  },
  { name: 'every tray a home', items: [item(['a', 'b'], { a: 1 }), item(['a', 'b'], { b: 1 })], score: null },
  { name: 'all at home', items: [item(['a'], { a: 1 }), item(['b'], { b: 1 })], score: 1 },
  { name: 'all away from home', items: [item(['a'], { b: 1 }), item(['b'], { a: 1 })], score: -1 },
  { name: 'hands: all of thirty right', items: [item(['a'], { a: 30 }), item(['b'], { b: 30 })], score: 1 },
  {
    name: 'hands: half and half',
    items: [item(['a'], { a: 15, b: 15 }), item(['b'], { a: 15, b: 15 })],
    score: 0,
  },
  // By hand: observed (20/30 + 25/30)/2 = 3/4; shares a 25/30, b 35/30 of 2; expected (25/60 + 35/60)/2 = 1/2.
  {
    name: 'hands: 20 and 25 of 30 right',
    items: [item(['a'], { a: 20, b: 10 }), item(['b'], { a: 5, b: 25 })],
    score: 0.5,
  },
  { name: 'a tray of no name', items: [item(['a'], { z: 1 }), item(['b'], { b: 1 })], score: 1 / 3 },
])('$name: $score', ({ items, score }) => {
  if (score === null) expect(placedAgreement(items).score).toBeNull();
  else expect(placedAgreement(items).score).toBeCloseTo(score, 12);
});

test('a table that is not square is ours to mend, so it throws', () => {
  expect(() => cohenKappa([[1, 2]])).toThrow(RangeError);
  expect(() =>
    weightedKappa(
      [[1]],
      [
        [0, 1],
        [1, 0],
      ],
    ),
  ).toThrow(RangeError);
});
