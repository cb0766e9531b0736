import { expect, test } from 'vitest';
import { countOrders } from '../../shared/ordering/index.ts';
import { numbered, ordered } from '../shared/ordering/steps.ts';

test('OEIS A160371, example: the N-shaped poset has exactly 5 orders (RF)', () => {
  expect(countOrders(ordered(numbered(4, [[0, 2], [1, 2], [1, 3]])))).toEqual({ count: 5n }); // prettier-ignore
});
