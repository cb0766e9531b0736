import { describe, expect, test } from 'vitest';
import { legalHandovers, whyNot, type Refusal, type World } from '../../../shared/bartering/index.ts';
import { give, goodsOf, smallWorld, traderOf } from './worlds.ts';

/** By hand: Dunna keeps her door shut until she is given a hide, and returns a bead; fish spoils after two handovers. */
const giftWorld: World = {
  goods: goodsOf(['hide', 'fish', 'cord', 'bead', 'axe', 'pot'], {
    fish: { spoilsAfter: 2 },
    bead: { onlyGiven: true },
  }),
  pupil: traderOf('you', {
    holds: { hide: 2, fish: 1 },
    wants: { hide: [2, 1], fish: [1], cord: [4], bead: [3], axe: [9], pot: [5] },
  }),
  traders: [
    traderOf('dunna', {
      holds: { bead: 1, axe: 1, fish: 1 },
      wants: { hide: [4], bead: [1], cord: [6], axe: [5], fish: [2] },
      door: 'gift',
      returns: 'bead',
    }),
    traderOf('esk', {
      holds: { cord: 2, pot: 1 },
      wants: { hide: [3, 2], fish: [3], cord: [2, 1], pot: [4] },
    }),
  ],
  aim: 'axe',
  bundle: 2,
};

describe('why not, as data', () => {
  const rows: {
    name: string;
    made?: ReturnType<typeof give>[];
    next: ReturnType<typeof give>;
    expected: Refusal | null;
  }[] = [
    { name: 'a swap both gain by happens', next: give('hide', 'esk', 'cord'), expected: null },
    {
      name: 'a stranger',
      next: give('hide', 'nobody', 'cord'),
      expected: { code: 'trader-unknown', trader: 'nobody' },
    },
    {
      name: 'yourself',
      next: give('hide', 'you', 'cord'),
      expected: { code: 'trader-unknown', trader: 'you' },
    },
    {
      name: 'a thing nobody knows',
      next: give('gold', 'esk', 'cord'),
      expected: { code: 'good-unknown', good: 'gold' },
    },
    { name: 'nothing at all', next: give('', 'esk', ''), expected: { code: 'nothing-passes' } },
    {
      name: 'fish for fish',
      made: [give('hide', 'dunna', '')],
      next: give('fish', 'dunna', 'fish'),
      expected: { code: 'same-both-ways', good: 'fish' },
    },
    {
      name: 'two for two',
      next: give('hide+hide', 'esk', 'cord+cord'),
      expected: { code: 'too-many-things', most: 1, offered: 2 },
    },
    {
      name: 'three for one',
      next: give('hide+hide+fish', 'esk', 'cord'),
      expected: { code: 'too-many-things', most: 2, offered: 3 },
    },
    {
      name: 'what you have not got',
      next: give('pot', 'esk', 'cord'),
      expected: { code: 'does-not-have', side: 'pupil', good: 'pot', has: 0, needs: 1 },
    },
    {
      name: 'what they have not got',
      next: give('hide', 'esk', 'axe'),
      expected: { code: 'does-not-have', side: 'them', good: 'axe', has: 0, needs: 1 },
    },
    {
      name: 'more than they have',
      next: give('hide', 'esk', 'pot+pot'),
      expected: { code: 'does-not-have', side: 'them', good: 'pot', has: 1, needs: 2 },
    },
    {
      name: 'a shut door',
      next: give('hide', 'dunna', 'axe'),
      expected: { code: 'door-shut', trader: 'dunna' },
    },
    {
      name: 'a thing only given',
      made: [give('hide', 'esk', 'cord'), give('hide', 'dunna', '')],
      next: give('cord', 'dunna', 'bead'),
      expected: { code: 'promised', good: 'bead' },
    },
    {
      name: 'a bead you were given',
      made: [give('hide', 'dunna', ''), give('hide', 'esk', 'cord'), give('', 'dunna', 'bead')],
      next: give('bead', 'esk', 'cord'),
      expected: { code: 'only-given', good: 'bead' },
    },
    {
      name: 'a gift to someone who takes none',
      next: give('hide', 'esk', ''),
      expected: { code: 'takes-no-gifts', trader: 'esk' },
    },
    {
      name: 'a second gift before the first is returned',
      made: [give('hide', 'dunna', '')],
      next: give('hide', 'dunna', ''),
      expected: { code: 'owes-already', good: 'bead' },
    },
    {
      name: 'asking for a return nobody owes',
      next: give('', 'dunna', 'bead'),
      expected: { code: 'nothing-owed', trader: 'dunna' },
    },
    {
      name: 'the return at the same visit',
      made: [give('hide', 'dunna', '')],
      next: give('', 'dunna', 'bead'),
      expected: { code: 'too-soon', good: 'bead' },
    },
    {
      name: 'another return than the one owed',
      made: [give('hide', 'dunna', ''), give('hide', 'esk', 'cord')],
      next: give('', 'dunna', 'axe'),
      expected: { code: 'owes-another', good: 'bead' },
    },
    {
      name: 'the return later',
      made: [give('hide', 'dunna', ''), give('hide', 'esk', 'cord')],
      next: give('', 'dunna', 'bead'),
      expected: null,
    },
    {
      name: 'spoiled fish',
      made: [give('hide', 'dunna', ''), give('hide', 'esk', 'cord')],
      next: give('fish', 'esk', 'cord'),
      expected: { code: 'spoiled', good: 'fish', afterHandovers: 2 },
    },
  ];
  test.each(rows)('$name', ({ made = [], next, expected }) => {
    expect(whyNot(giftWorld, made, next)).toEqual(expected);
  });

  test.each([
    {
      name: 'they do not want it',
      next: give('antler', 'cale', 'axe'),
      expected: { code: 'does-not-want', side: 'them', good: 'antler' },
    },
    {
      name: 'you do not want it',
      world: { ...smallWorld, pupil: { ...smallWorld.pupil, wants: { antler: [1], axe: [9] } } },
      next: give('antler', 'ama', 'flint'),
      expected: { code: 'does-not-want', side: 'pupil', good: 'flint' },
    },
    {
      name: 'they gain too little',
      next: give('antler', 'bero', 'flint'),
      expected: { code: 'worse-off', side: 'them', gives: 3, gets: 1 },
    },
    {
      name: 'they have one already',
      world: { ...smallWorld, pupil: { ...smallWorld.pupil, holds: { flint: 1 } } },
      next: give('flint', 'bero', 'pot'),
      expected: { code: 'has-enough', side: 'them', good: 'flint', has: 1 },
    },
    {
      name: 'it is all the same to them',
      next: give('antler', 'bero', 'pot'),
      expected: { code: 'no-better-off', side: 'them', gives: 1, gets: 1 },
    },
    {
      name: 'you would be worse off',
      world: {
        ...smallWorld,
        pupil: { ...smallWorld.pupil, holds: { grain: 1 }, wants: { grain: [3], flint: [2] } },
      },
      next: give('grain', 'bero', 'flint'),
      expected: { code: 'worse-off', side: 'pupil', gives: 3, gets: 2 },
    },
    {
      name: 'you would be no better off',
      world: {
        ...smallWorld,
        pupil: { ...smallWorld.pupil, holds: { grain: 1 }, wants: { grain: [3], flint: [3] } },
      },
      next: give('grain', 'bero', 'flint'),
      expected: { code: 'no-better-off', side: 'pupil', gives: 3, gets: 3 },
    },
  ])('$name', ({ world = smallWorld, next, expected }) => {
    expect(whyNot(world, [], next)).toEqual(expected);
  });

  test('what is allowed first in the small world, by hand: antler to Ama for grain or flint', () => {
    expect(legalHandovers(smallWorld, [])).toEqual([
      give('antler', 'ama', 'flint'),
      give('antler', 'ama', 'grain'),
    ]);
  });

  test('what is allowed is just what is not refused', () => {
    const legal = legalHandovers(giftWorld, []).map((handover) => JSON.stringify(handover));
    expect(legal).toContain(JSON.stringify(give('hide', 'dunna', '')));
    for (const text of legal) expect(whyNot(giftWorld, [], JSON.parse(text))).toBeNull();
  });
});
