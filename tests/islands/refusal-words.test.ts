import { describe, expect, test } from 'vitest';
import { whyNot, type Handover, type Refusal, type World } from '../../shared/bartering/index.ts';
import { BANDS } from '../../shared/library/index.ts';
import { catalogues, wordsFor } from '../../shared/words/index.ts';
import { refusalWords } from '../../src/islands/refusal-words.ts';

const good = (id: string, one: string, many: string) => ({
  id,
  one,
  many,
  hours: null,
  spoilsAfter: null,
  onlyGiven: false,
});

/** By hand: Dunna keeps her door shut until she is given a hide, and returns a bead; fish goes off after two handovers. */
const world: World = {
  goods: [
    good('hide', 'a hide', 'hides'),
    { ...good('fish', 'a fish', 'fish'), spoilsAfter: 2 },
    good('cord', 'a coil of cord', 'coils of cord'),
    { ...good('bead', 'a jet bead', 'jet beads'), onlyGiven: true },
    good('axe', 'an axe', 'axes'),
    good('pot', 'a pot', 'pots'),
  ],
  pupil: {
    id: 'you',
    name: 'You',
    holds: { hide: 3, fish: 1, pot: 1 },
    wants: { hide: [2, 1, 1], fish: [1], cord: [4], bead: [3], axe: [9], pot: [4] },
    forSwapping: [],
    door: 'open',
    returns: null,
  },
  traders: [
    {
      id: 'dunna',
      name: 'Dunna',
      holds: { bead: 1, axe: 1, fish: 1 },
      wants: { hide: [4, 2], bead: [1], cord: [6], axe: [5], fish: [2] },
      forSwapping: [],
      door: 'gift',
      returns: 'bead',
    },
    {
      id: 'esk',
      name: 'Esk',
      holds: { cord: 2, pot: 2, bead: 1, axe: 1 },
      wants: { hide: [3, 2], fish: [3], cord: [3, 1], pot: [3, 2], axe: [9] },
      forSwapping: [],
      door: 'open',
      returns: null,
    },
  ],
  aim: 'axe',
  bundle: 2,
};

const to = (trader: string, give: readonly string[], take: readonly string[]): Handover => ({
  with: trader,
  give,
  take,
});
const gift = to('dunna', ['hide'], []);
const words = wordsFor(catalogues.en.barterRefusals, '7-9');

/** Why the last of some handovers comes to nothing, in words. */
function said(made: readonly Handover[], next: Handover): string {
  const refusal = whyNot(world, made, next);
  if (refusal === null) throw new Error('it would happen');
  return refusalWords(words, world, next, refusal);
}

describe('a no is a sentence a child understands', () => {
  test.each([
    { made: [], next: to('esk', ['pot'], ['cord']), says: '“I have 2 pots already. That is enough.”' },
    { made: [], next: to('esk', ['hide'], ['axe']), says: '“I would rather keep an axe than have a hide.”' },
    {
      made: [],
      next: to('esk', ['hide', 'hide', 'hide'], ['cord']),
      says: '“No more than 2 things on one side, and one on the other.”',
    },
    {
      made: [],
      next: to('esk', ['hide'], ['bead']),
      says: '“A jet bead: we never swap that. We only give it.”',
    },
    {
      made: [],
      next: to('dunna', ['hide'], ['axe']),
      says: '“I swap with those who have given me something first.”',
    },
    {
      made: [],
      next: to('esk', ['hide'], []),
      says: '“I cannot take a gift. I would have nothing to give you back.”',
    },
    { made: [], next: to('esk', [], ['cord']), says: '“I owe you nothing. What do you give?”' },
    {
      made: [gift],
      next: to('dunna', [], ['bead']),
      says: '“You gave me that only now. Come back later, and I will give you a jet bead.”',
    },
    {
      made: [gift],
      next: to('dunna', [], ['axe']),
      says: '“That is not what I owe you. I owe you a jet bead.”',
    },
    {
      made: [gift],
      next: to('dunna', ['hide'], []),
      says: '“I still owe you a jet bead. Let me give you that first.”',
    },
    { made: [], next: to('esk', ['hide'], ['pot']), says: 'You have a pot already. One is enough.' },
    {
      made: [],
      next: to('esk', ['pot'], ['hide']),
      says: '“I do not have a hide to give.”',
    },
    { made: [], next: to('esk', ['axe'], ['cord']), says: 'You do not have that to give.' },
    { made: [], next: to('esk', [], []), says: 'Choose what you give and what you take.' },
    {
      made: [],
      next: to('esk', ['pot'], ['pot']),
      says: '“The same for the same? Then nothing changes.”',
    },
    {
      made: [gift, to('esk', ['hide'], ['cord'])],
      next: to('esk', ['fish'], ['cord']),
      says: 'A fish: gone off by now. Nobody wants that.',
    },
  ])('$says', ({ made, next, says }) => {
    expect(said(made, next)).toBe(says);
  });
});

/** One of each reason the engine gives, on either side. */
const every: readonly Refusal[] = [
  { code: 'trader-unknown', trader: 'x' },
  { code: 'good-unknown', good: 'x' },
  { code: 'nothing-passes' },
  { code: 'same-both-ways', good: 'hide' },
  { code: 'too-many-things', most: 1, offered: 2 },
  { code: 'too-many-things', most: 2, offered: 3 },
  { code: 'promised', good: 'bead' },
  { code: 'spoiled', good: 'fish', afterHandovers: 2 },
  { code: 'only-given', good: 'bead' },
  { code: 'door-shut', trader: 'dunna' },
  { code: 'takes-no-gifts', trader: 'esk' },
  { code: 'owes-already', good: 'bead' },
  { code: 'nothing-owed', trader: 'esk' },
  { code: 'owes-another', good: 'bead' },
  { code: 'too-soon', good: 'bead' },
  ...(['pupil', 'them'] as const).flatMap((side): Refusal[] => [
    { code: 'does-not-have', side, good: 'axe', has: 0, needs: 1 },
    { code: 'does-not-want', side, good: 'pot' },
    { code: 'has-enough', side, good: 'pot', has: 0 },
    { code: 'has-enough', side, good: 'pot', has: 1 },
    { code: 'has-enough', side, good: 'pot', has: 3 },
    { code: 'worse-off', side, gives: 3, gets: 1 },
    { code: 'no-better-off', side, gives: 2, gets: 2 },
  ]),
];

test.each(BANDS)(
  'ages %s: every reason has a sentence of its own, and none speaks of price or cost',
  (band) => {
    const sentences = every.map((refusal) =>
      refusalWords(
        wordsFor(catalogues.en.barterRefusals, band),
        world,
        to('esk', ['hide'], ['pot']),
        refusal,
      ),
    );
    expect(new Set(sentences).size).toBe(every.length);
    for (const sentence of sentences) {
      expect(sentence).toMatch(/^[“A-Z].*[.”?]$/);
      expect(sentence).not.toMatch(/\bprice|\bcosts?\b|\bpay|[{}]/i);
      expect(sentence.split(' ').length).toBeLessThanOrEqual(18);
    }
  },
);
