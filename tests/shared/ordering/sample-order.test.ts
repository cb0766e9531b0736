import { expect, test } from 'vitest';
import { stream } from '../../../shared/chance/index.ts';
import { dealSteps, listedOrder, sampleOrder, scoreOrder } from '../../../shared/ordering/index.ts';
import { axeSteps, numbered, ordered } from './steps.ts';

test.each([
  {
    name: 'the N, a knot',
    steps: numbered(4, [
      [0, 2],
      [1, 2],
      [1, 3],
    ]),
    orders: 5,
    limit: 18.467,
  }, // chi-square, 4 df, 0.1 %
  { name: 'the axe, strands within a series', steps: axeSteps, orders: 12, limit: 31.264 }, // 11 df, 0.1 %
])('$name: every valid order comes as often', ({ steps, orders, limit }) => {
  const precedence = ordered(steps);
  const chance = stream('every order as often');
  const seen = new Map<string, number>();
  const draws = 600 * orders;
  for (let draw = 0; draw < draws; draw += 1) {
    const order = sampleOrder(precedence, chance);
    expect(scoreOrder(precedence, order).score).toBe(1);
    seen.set(order.join(' '), (seen.get(order.join(' ')) ?? 0) + 1);
  }
  expect(seen.size).toBe(orders);
  const chiSquare = [...seen.values()].reduce((total, count) => total + (count - 600) ** 2 / 600, 0);
  expect(chiSquare).toBeLessThan(limit);
});

test('too many orders to count still gives a valid one', () => {
  const arrows = Array.from({ length: 30 }, (_, a) => [a, 30 + a]).concat(
    Array.from({ length: 29 }, (_, a) => [a, 31 + a]),
  );
  const precedence = ordered(numbered(60, arrows));
  expect(scoreOrder(precedence, sampleOrder(precedence, stream('sixty'))).score).toBe(1);
});

test('the cards are not dealt in a right order', () => {
  const two = ordered(numbered(2, [[0, 1]]));
  for (let seed = 0; seed < 100; seed += 1) expect(dealSteps(two, stream(String(seed)))).toEqual(['1', '0']);
});

test('the listed order is valid and keeps to the list where it can', () => {
  expect(listedOrder(ordered(axeSteps))).toEqual(axeSteps.map((step) => step.id));
  expect(listedOrder(ordered(axeSteps.toReversed()))[0]).toBe('cut-haft-wood');
});
