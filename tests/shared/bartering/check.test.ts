import { describe, expect, test } from 'vitest';
import { checkWorld, prove, type World } from '../../../shared/bartering/index.ts';
import { goodsOf, smallWorld, traderOf } from './worlds.ts';

const pupil = (more: Partial<World['pupil']>): World => ({
  ...smallWorld,
  pupil: { ...smallWorld.pupil, ...more },
});
const trader = (id: string, more: Partial<World['pupil']>): World => ({
  ...smallWorld,
  traders: smallWorld.traders.map((other) => (other.id === id ? { ...other, ...more } : other)),
});

test('a world that can be played has no faults', () => {
  expect(checkWorld(smallWorld, '7-9').faults).toEqual([]);
});

describe('a hand-written world that will not do says why and what to change', () => {
  test.each([
    { name: 'the aim is not a good', world: { ...smallWorld, aim: 'axes' }, codes: ['aim-unknown'] },
    { name: 'the aim is held already', world: pupil({ holds: { axe: 1 } }), codes: ['aim-held'] },
    {
      name: 'nobody holds the aim',
      world: trader('cale', { holds: { pot: 1 } }),
      codes: ['aim-unheld'],
    },
    {
      name: 'two things wanted most: ambiguous',
      world: pupil({ wants: { ...smallWorld.pupil.wants, pot: [9] } }),
      codes: ['aim-unclear'],
    },
    {
      name: 'the aim not wanted: one fault, not two',
      world: pupil({ wants: { antler: [1], flint: [4] }, forSwapping: [] }),
      codes: ['aim-unclear'],
    },
    {
      name: 'no chain: unsolvable',
      world: trader('cale', { wants: { axe: [5], pot: [2] } }),
      codes: ['world-unsolvable'],
    },
    {
      name: 'one straight swap: trivial',
      world: trader('cale', { wants: { axe: [5], antler: [6], flint: [6] } }),
      codes: ['world-trivial'],
    },
    {
      name: 'only one thing to do: trivial',
      world: trader('ama', { holds: { flint: 1 } }),
      codes: ['good-unused', 'world-trivial'],
    },
    { name: 'a good nobody listed', world: pupil({ holds: { antlr: 1 } }), codes: ['good-unknown'] },
    { name: 'half a thing', world: pupil({ holds: { antler: 0.5 } }), codes: ['count-unfit'] },
    {
      name: 'a second worth more than the first',
      world: trader('ama', { wants: { antler: [2, 5] } }),
      codes: ['wants-rise'],
    },
    {
      name: 'a worth below nothing',
      world: trader('ama', { wants: { antler: [-2] } }),
      codes: ['count-unfit'],
    },
    {
      name: 'for swapping but not wanted',
      world: pupil({ forSwapping: ['antler', 'hide'] }),
      codes: ['good-unknown'],
    },
    { name: 'a door that never opens', world: trader('ama', { door: 'gift' }), codes: ['door-never-opens'] },
    { name: 'a return nobody holds', world: trader('ama', { returns: 'pot' }), codes: ['return-unheld'] },
    {
      name: 'too many goods to look at',
      world: {
        ...smallWorld,
        goods: goodsOf([
          'antler',
          'flint',
          'grain',
          'pot',
          'axe',
          ...Array.from({ length: 120 }, (_, index) => `x${index}`),
        ]),
      },
      codes: ['world-too-large'],
    },
    {
      name: 'a trader with nothing to do',
      world: { ...smallWorld, traders: [...smallWorld.traders, traderOf('dunna', { holds: { pot: 1 } })] },
      codes: ['trader-idle'],
    },
    { name: 'bundles of ten', world: { ...smallWorld, bundle: 10 }, codes: ['count-unfit'] },
    {
      name: 'spoiled from the start',
      world: {
        ...smallWorld,
        goods: goodsOf(['antler', 'flint', 'grain', 'pot', 'axe'], { pot: { spoilsAfter: 0 } }),
      },
      codes: ['count-unfit'],
    },
    {
      name: 'one name twice',
      world: { ...smallWorld, traders: [...smallWorld.traders, traderOf('ama', {})] },
      codes: ['trader-repeated'],
    },
    {
      name: 'one good twice',
      world: { ...smallWorld, goods: [...smallWorld.goods, ...goodsOf(['axe'])] },
      codes: ['good-repeated'],
    },
  ])('$name', ({ world, codes }) => {
    const { faults } = checkWorld(world, null);
    expect(faults.map(({ code }) => code).sort((a, b) => (a < b ? -1 : 1))).toEqual(codes);
    for (const fault of faults)
      expect([fault.expected, fault.received, fault.mend].every((text) => text.length > 0)).toBe(true);
  });

  test('the mend of an unsolvable world, followed, gives a world that can be solved as it says', () => {
    const world = trader('cale', { wants: { axe: [5], flint: [3] } });
    const fault = checkWorld(world, null).faults[0];
    expect(fault?.received).toBe(
      'no chain: cale gives "axe" for nothing you can come by (pot, grain, flint and antler)',
    );
    expect(fault?.mend).toBe('let cale want "pot" at 6 or more (now 0): then "axe" is 3 handovers away');
    const mended = trader('cale', { wants: { axe: [5], flint: [3], pot: [6] } });
    expect(prove(mended).par).toBe(3);
  });

  test('the mend of a trivial world, followed, makes it longer as it says', () => {
    const world = trader('cale', { wants: { axe: [5], antler: [6], flint: [6] } });
    const fault = checkWorld(world, null).faults[0];
    expect(fault?.mend).toBe('let cale not want "antler": then it takes 2');
    expect(fault?.path).toEqual(['traders', 'cale', 'wants', 'antler']);
  });

  test('younger bands are not left where one cannot step back: fish that spoils', () => {
    // Fish is needed for the axe, and spoils after one handover: the pot has to wait.
    const world: World = {
      goods: goodsOf(['fish', 'pot', 'flint', 'axe', 'cord'], { fish: { spoilsAfter: 1 } }),
      pupil: traderOf('you', {
        holds: { fish: 1, cord: 1 },
        wants: { fish: [1], cord: [1], pot: [3], flint: [4], axe: [20] },
      }),
      traders: [
        traderOf('ama', { holds: { flint: 1 }, wants: { fish: [3], flint: [2] } }),
        traderOf('bero', { holds: { pot: 1 }, wants: { cord: [3], pot: [2] } }),
        traderOf('cale', {
          holds: { axe: 1, cord: 1 },
          wants: { flint: [6], axe: [5], pot: [2], cord: [1] },
        }),
      ],
      aim: 'axe',
      bundle: 1,
    };
    expect(prove(world).deadEnds?.withoutWayBack).toBe(1);
    expect(checkWorld(world, '7-9').faults.map(({ code }) => code)).toContain('dead-end-final');
    expect(checkWorld(world, '11-14').faults.map(({ code }) => code)).not.toContain('dead-end-final');
  });

  test('more than a band can hold is a caution', () => {
    const many = {
      ...smallWorld,
      bundle: 2,
      traders: [...smallWorld.traders, ...['x', 'y'].map((id) => traderOf(id, { holds: { pot: 1 } }))],
    };
    const { faults } = checkWorld(many, '4-5');
    expect(faults.map(({ code, grade }) => [code, grade])).toEqual([
      ['trader-idle', 'caution'],
      ['trader-idle', 'caution'],
      ['bundle-over', 'caution'],
      ['traders-over', 'caution'],
    ]);
  });
});

test('a world too large to look at says so, and par is still proved where the aim is met first', () => {
  const ids = Array.from({ length: 14 }, (_, index) => `g${index}`);
  const goods = goodsOf([...ids, 'axe']);
  const wants = Object.fromEntries(ids.map((id, index) => [id, [index + 1]]));
  const world: World = {
    goods,
    pupil: traderOf('you', { holds: { g0: 1, g1: 1, g2: 1, g3: 1 }, wants: { ...wants, axe: [99] } }),
    traders: [
      ...ids.slice(4).map((id, index) =>
        traderOf(`t${index}`, {
          holds: { [id]: 1 },
          wants: { ...Object.fromEntries(ids.map((other) => [other, [9]])), [id]: [1] },
        }),
      ),
      traderOf('last', { holds: { axe: 1 }, wants: { g13: [3], axe: [1] } }),
    ],
    aim: 'axe',
    bundle: 1,
  };
  const proof = prove(world, 500);
  expect(proof).toMatchObject({ isComplete: false, solvable: true, par: 2, deadEnds: null });
  expect(proof.aimless?.how).toBe('sampled');
  expect(prove(world, 5)).toMatchObject({ isComplete: false, par: null });
});
