import { expect, test } from 'vitest';
import { topTradingCycles } from '../../shared/bartering/index.ts';

// The cycles {3}, {1, 2, 5}, {4, 6} are re-found in a textbook; the table of preferences is from memory, the result
// worked through by hand (DER).
test('six agents, textbook example of Shapley & Scarf 1974 (Journal of Mathematical Economics 1: 23-37)', () => {
  const { rounds, allocation } = topTradingCycles({
    '1': ['3', '2', '4', '1'],
    '2': ['3', '5', '6', '2'],
    '3': ['3'],
    '4': ['2', '5', '6', '4'],
    '5': ['1', '3', '2', '5'],
    '6': ['2', '4', '5', '6'],
  });
  expect(rounds).toEqual([[['3']], [['1', '2', '5']], [['4', '6']]]);
  expect(allocation).toEqual({ '1': '2', '2': '5', '3': '3', '4': '6', '5': '1', '6': '4' });
});
