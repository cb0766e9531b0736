import { expect, test } from 'vitest';
import { shortestSwapChain } from '../../shared/bartering/index.ts';

const OFFERS = [
  { give: 'antler', get: 'flint' },
  { give: 'flint', get: 'hide' },
  { give: 'hide', get: 'axe' },
  { give: 'flint', get: 'grain' },
  { give: 'grain', get: 'axe' },
  { give: 'antler', get: 'grain' },
];

// Breadth-first search by hand over six standing offers (DER); the shortest chain is the only one of its length.
test('antler to axe over six offers, breadth first by hand: two swaps, by way of grain', () => {
  const { par, ways, chain } = shortestSwapChain(OFFERS, 'antler', 'axe');
  expect({ par, ways, chain }).toEqual({ par: 2, ways: 1, chain: ['antler', 'grain', 'axe'] });
});

// Nothing is offered for flint (DER).
test('flint to axe where only antler is taken: no chain, and the reason', () => {
  const answer = shortestSwapChain([{ give: 'antler', get: 'flint' }], 'flint', 'axe');
  expect(answer).toEqual({ par: null, ways: 0, chain: null, why: 'goal-unreachable' });
});
