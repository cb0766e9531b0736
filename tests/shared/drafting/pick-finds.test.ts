import { describe, expect, test } from 'vitest';
import { shuffle, stream } from '../../../shared/chance/index.ts';
import { pickFinds, type Choice } from '../../../shared/drafting/pick-finds.ts';
import {
  bitsOf,
  likeness,
  makePool,
  trayMerit,
  trayParts,
  type Pool,
} from '../../../shared/drafting/trays-merit.ts';
import { ATTRIBUTES, type Attribute, type Find } from '../../../shared/library/index.ts';
import { demoLibrary } from '../../demo.ts';

const finds = demoLibrary.sites.flatMap(({ pits }) => pits).flatMap((pit) => pit.finds);
const poolOf = (from: readonly Find[], by: Attribute, mostTrays = 4): Pool =>
  makePool(from, by, { band: '7-9', age: 7, mostTrays, safety: demoLibrary.safety, doubtful: new Set() });
function picked(pool: Pool, count: number, fixed: readonly number[], seed: string): Choice | null {
  const steps = pickFinds(pool, count, fixed, stream(seed));
  let step = steps.next();
  while (step.done !== true) step = steps.next();
  return step.value;
}

/** Every choice of `count` out of `size`, written here in its own way. */
const everyChoice = (size: number, count: number): number[][] =>
  count === 0
    ? [[]]
    : Array.from({ length: size }, (_, last) => last).flatMap((last) =>
        everyChoice(last, count - 1).map((rest) => [...rest, last]),
      );

describe('entropy', () => {
  // Shannon 1948, section 6: n equal chances have log2 n bits; one certain thing has none.
  test.each([
    { sizes: [1, 1], bits: 1 },
    { sizes: [3, 3, 3, 3], bits: 2 },
    { sizes: [9], bits: 0 },
    { sizes: [1, 2, 1], bits: 1.5 },
  ])('$sizes: $bits bits', ({ sizes, bits }) => {
    expect(bitsOf(sizes)).toBeCloseTo(bits, 12);
  });
});

test('a find is wholly like itself, and likeness has no direction', () => {
  const [a, b] = finds;
  if (a === undefined || b === undefined) throw new Error('no finds');
  expect(likeness(a, a)).toBeCloseTo(1, 12);
  expect(likeness(a, b)).toBe(likeness(b, a));
});

test.each(['1', '2', '3', '4', '5'])(
  'where all choices can be looked at, none is better by more than the slack (seed %s)',
  (seed) => {
    const some = shuffle(stream(seed), finds).slice(0, 11);
    const pool = poolOf(some, 'made-by');
    const choice = picked(pool, 5, [], seed);
    const best = Math.max(...everyChoice(11, 5).map((chosen) => trayMerit(pool, chosen)));
    expect(choice?.isBest).toBe(true);
    expect(choice?.merit).toBeGreaterThanOrEqual(best - 0.02);
  },
);

test.each(ATTRIBUTES.filter((by) => by !== 'object-type'))(
  'by %s each of three seeds beats the best of as many choices at random as it looks at',
  (by) => {
    const pool = poolOf(finds, by, 6);
    const choices = ['1', '2', '3'].map((seed) => picked(pool, 18, [], seed));
    const chance = stream(`random/${by}`);
    const places = finds.map((_, index) => index);
    const random = Array.from({ length: choices[0]?.lookedAt ?? 0 }, () =>
      trayMerit(pool, shuffle(chance, places).slice(0, 18)),
    );
    expect(random.length).toBe(4800);
    for (const choice of choices) expect(choice?.merit).toBeGreaterThan(Math.max(...random));
    // A choice that cannot be played is worth -1; the mean is taken of those that can.
    const playable = random.filter((merit) => merit >= 0);
    const mean = playable.reduce((sum, merit) => sum + merit, 0) / Math.max(1, playable.length);
    expect(choices[0]?.merit).toBeGreaterThan(mean + 0.1);
  },
);

test('pinned finds stay, whatever else is picked', () => {
  const pool = poolOf(finds, 'material');
  for (const seed of ['1', '2', '3'])
    expect(picked(pool, 10, [3, 40], seed)?.chosen).toEqual(expect.arrayContaining([3, 40]));
});

test('finds that look alike never have to be told apart', () => {
  const [model] = finds;
  if (model === undefined) throw new Error('no finds');
  const twin = { ...model, id: 'P1-999', attributes: { ...model.attributes, age: 'modern' } };
  const others = finds.filter(({ attributes }) => attributes.age === 'natural').slice(0, 4);
  const pool = poolOf([model, twin, ...others], 'age');
  const choice = picked(pool, 4, [], '1');
  expect(choice?.chosen.includes(0) && choice.chosen.includes(1)).toBe(false);
  expect(picked(poolOf([model, twin, { ...twin, id: 'P1-998' }], 'age'), 3, [], '1')).toBeNull();
});

test('each part says what it says', () => {
  const even = poolOf(
    ['flint', 'bone', 'chalk', 'pottery'].flatMap((material) =>
      finds.filter(({ attributes }) => attributes.material === material).slice(0, 2),
    ),
    'material',
  );
  expect(trayParts(even, [0, 1, 2, 3, 4, 5, 6, 7]).balance).toBeCloseTo(1, 12);
  const natural = finds.filter(({ role }) => role === 'decoy-natural').slice(0, 1);
  const evidence = finds.filter(({ role }) => role === 'evidence').slice(0, 4);
  expect(trayParts(poolOf([...natural, ...evidence], 'age'), [0, 1, 2, 3, 4]).decoys).toBeCloseTo(1, 12);
  expect(trayParts(poolOf(evidence, 'material'), [0, 1, 2, 3]).decoys).toBe(0);
});
