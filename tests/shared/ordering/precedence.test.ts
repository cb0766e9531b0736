import { expect, test } from 'vitest';
import {
  freePairs,
  orderedPairs,
  readSteps,
  restrictSteps,
  stepRooms,
} from '../../../shared/ordering/index.ts';
import { axeSteps, numbered, ordered } from './steps.ts';

test('an arrow through another step counts as coming before', () => {
  expect(orderedPairs(ordered(numbered(3, [[0, 1], [1, 2]])))).toEqual([[0, 1], [0, 2], [1, 2]]); // prettier-ignore
});

test.each([
  {
    name: 'a ring of three',
    size: 3,
    arrows: [
      [0, 1],
      [1, 2],
      [2, 0],
    ],
    cycle: ['0', '1', '2'],
  },
  { name: 'a step that must follow itself', size: 2, arrows: [[1, 1]], cycle: ['1'] },
  {
    name: 'a ring hanging from a sound strand',
    size: 5,
    arrows: [
      [0, 1],
      [1, 2],
      [2, 3],
      [3, 2],
      [3, 4],
    ],
    cycle: ['2', '3'],
  },
  {
    name: 'the shorter of two rings',
    size: 5,
    arrows: [
      [0, 1],
      [1, 2],
      [2, 0],
      [3, 4],
      [4, 3],
    ],
    cycle: ['3', '4'],
  },
])('$name is named, each step before the next', ({ size, arrows, cycle }) => {
  expect(readSteps(numbered(size, arrows))).toEqual({ precedence: null, cycle });
});

test('an unknown or repeated step is a slip of the caller', () => {
  expect(() => readSteps([{ id: 'grind', mustFollow: ['rough-out'] }])).toThrow(
    /grind must follow rough-out/,
  );
  expect(() =>
    readSteps([
      { id: 'grind', mustFollow: [] },
      { id: 'grind', mustFollow: [] },
    ]),
  ).toThrow(/named twice/);
});

test('fewer steps keep what the left-out ones implied, with the fewest arrows', () => {
  expect(restrictSteps(ordered(axeSteps), ['find-nodule', 'grind', 'cut-haft-wood', 'bind'])).toEqual([
    { id: 'find-nodule', mustFollow: [] },
    { id: 'grind', mustFollow: ['find-nodule'] },
    { id: 'cut-haft-wood', mustFollow: [] },
    { id: 'bind', mustFollow: ['grind', 'cut-haft-wood'] },
  ]);
});

test('the haft wood is free of the blade until the socket, and the record says what needs both', () => {
  const free = freePairs(ordered(axeSteps));
  expect(free).toContainEqual({ pair: ['grind', 'cut-haft-wood'], bothAfter: [], bothBefore: ['fit'] });
  expect(free).toContainEqual({
    pair: ['grind', 'cut-socket'],
    bothAfter: ['rough-out'],
    bothBefore: ['fit'],
  });
  expect(free).toHaveLength(28 - 22); // 8 steps make 28 pairs
});

test('each step has the room its neighbours leave it', () => {
  expect(stepRooms(ordered(axeSteps))).toEqual([
    { id: 'find-nodule', earliest: 1, latest: 2 },
    { id: 'rough-out', earliest: 2, latest: 3 },
    { id: 'grind', earliest: 3, latest: 5 },
    { id: 'polish', earliest: 4, latest: 6 },
    { id: 'cut-haft-wood', earliest: 1, latest: 5 },
    { id: 'cut-socket', earliest: 4, latest: 6 },
    { id: 'fit', earliest: 7, latest: 7 },
    { id: 'bind', earliest: 8, latest: 8 },
  ]);
});
