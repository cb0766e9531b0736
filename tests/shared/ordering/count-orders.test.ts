import { array, assert, nat, property, tuple } from 'fast-check';
import { expect, test } from 'vitest';
import { countForJson, countOrders, orderedPairs } from '../../../shared/ordering/index.ts';
import { allOrders, axeSteps, numbered, ordered } from './steps.ts';

test('the axe with the socket waiting for the blade has twelve orders', () => {
  expect(countOrders(ordered(axeSteps))).toEqual({ count: 12n });
});

test.each([
  { name: 'no steps', size: 0, arrows: [], expected: 1n },
  { name: 'one step', size: 1, arrows: [], expected: 1n },
  {
    name: 'forty steps in a chain',
    size: 40,
    arrows: Array.from({ length: 39 }, (_, i) => [i, i + 1]),
    expected: 1n,
  },
  { name: '25 free steps: 25!', size: 25, arrows: [], expected: 15511210043330985984000000n },
  {
    name: 'two chains of ten: C(20, 10)',
    size: 20,
    arrows: Array.from({ length: 18 }, (_, i) => (i < 9 ? [i, i + 1] : [i + 1, i + 2])),
    expected: 184756n,
  },
])('$name', ({ size, arrows, expected }) => {
  expect(countOrders(ordered(numbered(size, arrows)))).toEqual({ count: expected });
});

test('a knot too large to count says so', () => {
  // A crown of 2 × 30: each of the upper steps needs all lower ones but its own.
  const arrows = Array.from({ length: 30 }, (_, a) => a).flatMap((a) =>
    Array.from({ length: 30 }, (_, b) => [a, 30 + b]).filter(([, b]) => b !== 30 + a),
  );
  expect(countOrders(ordered(numbered(60, arrows)))).toEqual({ count: null, reason: 'very-many' });
});

test('counting agrees with writing out every order', () => {
  const arrow = tuple(nat(5), nat(5)).filter(([a, b]) => a < b);
  assert(
    property(array(arrow, { maxLength: 8 }), (arrows) => {
      const precedence = ordered(numbered(6, arrows));
      const pairs = orderedPairs(precedence);
      const valid = allOrders([0, 1, 2, 3, 4, 5]).filter((order) =>
        pairs.every(([before, after]) => order.indexOf(before) < order.indexOf(after)),
      );
      expect(countOrders(precedence)).toEqual({ count: BigInt(valid.length) });
    }),
    { numRuns: 60 },
  );
});

test('counts beyond 2^53 are digits in JSON', () => {
  expect(countForJson(9007199254740991n)).toBe(9007199254740991);
  expect(countForJson(9007199254740992n)).toBe('9007199254740992');
});
