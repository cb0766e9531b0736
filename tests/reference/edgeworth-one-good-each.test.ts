import { expect, test } from 'vitest';
import { cobbDouglasExchange } from '../../shared/bartering/index.ts';

// Inputs: a published two-trader worked example, each owning ten of one good (RF). Results: the closed form
// p = (aA*A2 + aB*B2) / ((1 - aA)*A1 + (1 - aB)*B1) = (0 + 3) / (4 + 0), by hand (DER).
test('two traders with ten of one good each: rate 0.75, six and three against four and seven', () => {
  const settled = cobbDouglasExchange({
    A: { share1: 0.6, endowment: [10, 0] },
    B: { share1: 0.3, endowment: [0, 10] },
  });
  if (settled.priceRatio === null) throw new Error(settled.why);
  expect(settled.priceRatio).toBeCloseTo(0.75, 9);
  expect(settled.A[0]).toBeCloseTo(6, 9);
  expect(settled.A[1]).toBeCloseTo(3, 9);
  expect(settled.B[0]).toBeCloseTo(4, 9);
  expect(settled.B[1]).toBeCloseTo(7, 9);
});
