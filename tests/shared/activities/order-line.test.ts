import { expect, test } from 'vitest';
import { insertCard } from '../../../src/stores/order.ts';

test.each([
  ['an empty place takes it', [null, 'a', null], 0, ['x', 'a', null]],
  ['a card there moves to the next empty place', ['a', null, null], 0, ['x', 'a', null]],
  ['a run of cards moves up together', ['a', 'b', null], 0, ['x', 'a', 'b']],
  ['with no room after, those before make room', [null, 'a', 'b'], 2, ['a', 'b', 'x']],
  ['a gap further on stays where it is', ['a', null, 'b', null], 2, ['a', null, 'x', 'b']],
] as const)('%s', (_, line, place, expected) => {
  expect(insertCard(line, 'x', place)).toEqual(expected);
});

test('a full line stays as it is', () => {
  expect(insertCard(['a', 'b'], 'x', 1)).toEqual(['a', 'b']);
});
