import { describe, expect, test } from 'vitest';
import { checkWorld } from '../../../../shared/bartering/index.ts';
import { classOf, compiled, gatheringOf, told } from './barter-of.ts';

test.each([
  { band: '4-5', make: '{ traders: 2, chain: 2 }' },
  { band: '5-7', make: '{ traders: 3, chain: 2 }' },
  { band: '7-9', make: '{ traders: 4, chain: 3 }' },
  { band: '9-11', make: '{ traders: 5, chain: 3 }' },
  { band: '11-14', make: '{ traders: 6, chain: 4 }' },
  { band: '14-16', make: '{ traders: 8, chain: 5 }' },
] as const)(
  'ages $band: a gathering is made from one line, and a check as of one by hand agrees',
  ({ band, make }) => {
    const { world, par } = gatheringOf(`make: ${make}`, band);
    const { faults, proof } = checkWorld(world, band);
    expect(faults).toEqual([]);
    expect(proof?.par).toBe(par);
  },
);

test('the lead’s number of traders, length of chain, goods and aim are kept', () => {
  const { world, par, question } = gatheringOf(
    'make: { traders: 6, chain: 4, goods: [hide, flint, pot, axe, cord, antler, basket, mat], aim: mat }',
  );
  expect(world.traders).toHaveLength(6);
  expect(par).toBe(4);
  expect(world.aim).toBe('mat');
  expect(world.goods.map(({ id }) => id).toSorted()).toEqual(
    ['antler', 'axe', 'basket', 'cord', 'flint', 'hide', 'mat', 'pot'].toSorted(),
  );
  expect(question).toBe('Come home with a rush mat.');
});

test('the goods may be the things of a pit, with their hours where we know them', () => {
  const { world } = gatheringOf('make: { traders: 4, chain: 3, goods: { pit: P7 } }');
  const axe = world.goods.find(({ id }) => id === 'polished-axe');
  expect(axe).toEqual({
    id: 'polished-axe',
    one: 'a polished axe head',
    many: 'polished axe heads',
    hours: 11.3,
    spoilsAfter: null,
    onlyGiven: false,
  });
  expect(world.goods.some(({ id }) => id === 'plastic-tag' || id === 'natural-pebble')).toBe(false);
});

test('younger bands see wants, older ones ask; a lead may say otherwise', () => {
  expect(gatheringOf('make: { traders: 3, chain: 2 }', '5-7').wants).toBe('shown');
  expect(gatheringOf('make: { traders: 4, chain: 2 }', '9-11').wants).toBe('asked');
  expect(gatheringOf('make: { traders: 4, chain: 2 }\nwants: shown', '9-11').wants).toBe('shown');
});

test('from any seed, as long as was asked, with an example of that length', () => {
  for (let seed = 0; seed < 20; seed += 1) {
    const { example, par } = gatheringOf('make: { traders: 4, chain: 3 }', '7-9', String(seed));
    expect(example).toHaveLength(par);
    expect(par).toBe(3);
  }
});

describe('a class', () => {
  test('has a card for every pupil, and all can gain', () => {
    const { deal } = classOf('class: { pupils: 31 }', '9-11');
    expect(deal.cards.map(({ number }) => number)).toEqual(
      Array.from({ length: 31 }, (_, index) => index + 1),
    );
    expect(deal.possible).toBe(true);
    expect(deal.straightPlan.flat().toSorted((a, b) => a - b)).toHaveLength(31);
  });

  test('neither food that spoils nor what is only given is dealt', () => {
    const { goods } = classOf('class: { pupils: 12, goods: [hide, pot, fish, bead, cord, axe] }', '9-11');
    expect(goods.map(({ id }) => id)).toEqual(['hide', 'pot', 'cord', 'axe']);
  });
});

test.each([
  { name: 'nothing asked for', block: 'wants: shown', is: ['gathering-unclear 8:1'] },
  {
    name: 'two things asked for',
    block: 'class: { pupils: 9 }\nmake: { traders: 4, chain: 3 }',
    is: ['gathering-unclear 9:1'],
  },
  {
    name: 'a pit that is none',
    block: 'make: { traders: 4, chain: 3, goods: { pit: P77 } }',
    is: ['find-unknown 9:45'],
  },
  {
    name: 'a good that is none',
    block: 'make: { traders: 4, chain: 3, goods: [hyde] }',
    is: ['good-unknown 9:39'],
  },
  {
    name: 'too few for a class',
    block: 'class: { pupils: 9, goods: [hide, fish, bead, pot] }',
    is: ['goods-too-few 9:28'],
  },
  { name: 'a class of forty', block: 'class: { pupils: 40 }', is: ['value-unfit 9:18'] },
  {
    name: 'an aim that is no good of it',
    block: 'make: { traders: 4, chain: 3, goods: [hide, pot, axe, cord, mat, flint], aim: hat }',
    is: ['aim-unknown 9:79'],
  },
])('$name is told at its place', ({ block, is }) => {
  expect(told(block)).toEqual(is);
});

test('a good misspelt is named with its nearest', () => {
  const [problem] = compiled('make: { traders: 4, chain: 3, goods: [hyde] }').problems;
  expect(problem?.mend).toBe('write "hide"');
});
