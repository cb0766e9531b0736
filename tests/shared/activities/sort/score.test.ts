import { expect, test } from 'vitest';
import { scoreSort, type SortActivity } from '../../../../shared/activities/scorers.ts';
import { sortOf } from './sort-of.ts';

const MADE = `title: Who made this?
finds: [P3-124, P3-125, P3-127, P3-131]
by: made-by
trays: [carved, ground, fired, not made]
minutes: 8`;

const sort = sortOf(MADE);
const RIGHT = { 'P3-124': 'carved', 'P3-125': 'ground', 'P3-127': 'fired', 'P3-131': 'not-made' };

const scored = (activity: SortActivity, placed: Readonly<Record<string, string>>) =>
  scoreSort(activity, { activity: activity.id, placed });

// Expected values are worked by hand: observed share, and the share of dealing the same choices at random.
test.each([
  { name: 'all four right', placed: RIGHT, score: 1, guess: 1 / 4 },
  {
    name: 'two swapped: (2/4 - 1/4) / (3/4)',
    placed: { ...RIGHT, 'P3-124': 'ground', 'P3-125': 'carved' },
    score: 1 / 3,
    guess: 1 / 4,
  },
  {
    name: 'all four moved on by one: (0 - 1/4) / (3/4)',
    placed: { 'P3-124': 'ground', 'P3-125': 'fired', 'P3-127': 'not-made', 'P3-131': 'carved' },
    score: -1 / 3,
    guess: 1 / 4,
  },
  {
    name: 'all in one tray',
    placed: { 'P3-124': 'fired', 'P3-125': 'fired', 'P3-127': 'fired', 'P3-131': 'fired' },
    score: 0,
    guess: 1 / 4,
  },
  {
    name: 'two right, two left in the pit: (2/4 - 2/16) / (14/16)',
    placed: { 'P3-124': 'carved', 'P3-125': 'ground' },
    score: 3 / 7,
    guess: 1 / 8,
  },
  {
    name: 'one wrong, three in the pit: (0 - 1/16) / (15/16)',
    placed: { 'P3-124': 'ground' },
    score: -1 / 15,
    guess: 1 / 16,
  },
])('$name', ({ placed, score, guess }) => {
  const result = scored(sort, placed);
  expect(result.score).toBeCloseTo(score, 12);
  expect(result.guess).toBeCloseTo(guess, 12);
});

test('nothing placed says nothing, and every find is still in the pit', () => {
  const { score, guess, working } = scored(sort, {});
  expect({ score, guess }).toEqual({ score: null, guess: null });
  expect(working.feedback.map(({ agrees, placed }) => `${agrees} ${placed}`)).toEqual(
    Array(4).fill('unplaced null'),
  );
});

test('the words on a tray do as well as its id, and a tray that is none agrees with nothing', () => {
  expect(scored(sort, { ...RIGHT, 'P3-131': 'not made' }).score).toBeCloseTo(1, 12);
  expect(scored(sort, { ...RIGHT, 'P3-131': 'bin' }).working.agreeing).toBe(3);
});

test('a placed find that the sort does not have changes nothing', () => {
  expect(scored(sort, { ...RIGHT, 'P9-194': 'carved' })).toEqual(scored(sort, RIGHT));
});

test('a second home agrees, and is called an argument', () => {
  const argued = sortOf(`${MADE}\nalso: [{ find: P3-125, tray: carved, because: it was pecked first }]`);
  const result = scored(argued, { ...RIGHT, 'P3-125': 'carved' });
  expect(result.score).toBeCloseTo(1, 12);
  expect(result.working.feedback.find(({ find }) => find === 'P3-125')).toEqual({
    find: 'P3-125',
    placed: 'carved',
    agrees: 'argument',
    agreement: 1,
  });
  expect(scored(argued, RIGHT).score).toBeCloseTo(1, 12);
});

const AGES = `title: How old?
finds: [P9-194, P9-190, P9-191]
by: age
ordered: true
trays: [modern, late neolithic, older than the pit]
minutes: 8`;

test('ordered trays count a near miss in part: linear weights, by hand', () => {
  const ages = sortOf(AGES);
  // Nearness 1, 1/2 and 0 for no, one and two steps. Homes modern, late-neolithic, older-than-the-pit.
  // The last is one step out: observed (1 + 1 + 1/2)/3 = 5/6. Dealt at random: choices modern 1, late 2 of 3;
  // modern earns (1 + 1/2 + 0)/3 = 1/2, late (1/2 + 1 + 1/2)/3 = 2/3; expected (1/2 + 2 · 2/3)/3 = 11/18.
  const near = scored(ages, { 'P9-194': 'modern', 'P9-190': 'late-neolithic', 'P9-191': 'late-neolithic' });
  expect(near.guess).toBeCloseTo(11 / 18, 12);
  expect(near.score).toBeCloseTo(4 / 7, 12);
  // Two steps out: observed 2/3, expected (2 · 1/2 + 2/3)/3 = 5/9.
  const far = scored(ages, { 'P9-194': 'modern', 'P9-190': 'late-neolithic', 'P9-191': 'modern' });
  expect(far.score).toBeCloseTo(1 / 4, 12);
  expect(near.working.feedback.find(({ find }) => find === 'P9-191')).toMatchObject({
    agrees: 'no',
    agreement: 0.5,
  });
});

test('hands up: the shares of a class are scored as one pupil’s choices are', () => {
  const hands = Object.fromEntries(Object.entries(RIGHT).map(([find, tray]) => [find, { [tray]: 28 }]));
  expect(scoreSort(sort, { activity: sort.id, hands }).score).toBeCloseTo(1, 12);
  // Half the class swaps two finds: observed (1/2 + 1/2 + 1 + 1)/4 = 3/4, expected 1/4.
  const split = { ...hands, 'P3-124': { carved: 14, ground: 14 }, 'P3-125': { carved: 14, ground: 14 } };
  const result = scoreSort(sort, { activity: sort.id, hands: split });
  expect(result.score).toBeCloseTo(2 / 3, 12);
  expect(result.working.feedback.find(({ find }) => find === 'P3-124')).toMatchObject({ agreement: 0.5 });
  const none = Object.fromEntries(Object.keys(RIGHT).map((find) => [find, { carved: 0 }]));
  expect(scoreSort(sort, { activity: sort.id, hands: none }).score).toBeNull();
});

const OWN = 'title: x\nfinds: { pit: P7 }\nby: material\ntrays: ours\nminutes: 20';

test.each(['material', 'used-for', 'made-by', 'state'] as const)(
  'trays of one’s own that follow %s are seen to',
  (attribute) => {
    const own = sortOf(OWN);
    const { score, working } = scored(
      own,
      Object.fromEntries(own.finds.map(({ id, attributes }) => [id, `the ${attributes[attribute]} tray`])),
    );
    expect(score).toBeCloseTo(1, 12);
    expect(working.followed).toEqual({ attribute, index: 1 });
  },
);

test('the names of one’s own trays do not matter', () => {
  const own = sortOf(OWN);
  const place = (name: (material: string) => string) =>
    scored(own, Object.fromEntries(own.finds.map(({ id, attributes }) => [id, name(attributes.material)])))
      .score;
  expect(place((material) => `x${material}`)).toBe(place((material) => material));
});
