import { expect, test } from 'vitest';
import { countOrders, readSteps, scoreOrder } from '../../shared/ordering/index.ts';
import { numbered, ordered } from '../shared/ordering/steps.ts';

test('five free steps have 5! = 120 orders (DER, definition)', () => {
  expect(countOrders(ordered(numbered(5, [])))).toEqual({ count: 120n });
});

test('a ring of three has no order, and is named (DER, definition)', () => {
  const { precedence, cycle } = readSteps(numbered(3, [[0, 1], [1, 2], [2, 0]])); // prettier-ignore
  expect(precedence).toBeNull();
  expect(cycle).toEqual(['0', '1', '2']);
});

test('two broken of fourteen implied pairs: kept 0.857143, partial tau 0.714286 (DER, over the transitive closure)', () => {
  const precedence = ordered(numbered(6, [[0, 1], [1, 2], [2, 3], [2, 4], [3, 5], [4, 5]])); // prettier-ignore
  const score = scoreOrder(precedence, ['0', '2', '1', '3', '5', '4']);
  expect(score).toMatchObject({ pairs: 14, broken: 2, brokenPairs: [['1', '2'], ['4', '5']] }); // prettier-ignore
  expect(score.fractionKept).toBeCloseTo(0.857143, 6);
  expect(score.score).toBeCloseTo(0.714286, 6);
  expect(countOrders(precedence)).toEqual({ count: 2n });
});

test('no pairs: nothing to score, any order works (DER, 0/0)', () => {
  expect(scoreOrder(ordered(numbered(3, [])), ['2', '0', '1'])).toMatchObject({
    pairs: 0,
    broken: 0,
    fractionKept: null,
    score: null,
    reason: 'any-order',
  });
});
