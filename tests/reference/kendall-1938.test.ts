import { expect, test } from 'vitest';
import { kendallTau } from '../../shared/ordering/index.ts';

test('Kendall 1938 by definition: ten pupils, 21 pairs agree and 24 do not, tau -0.066667 (DER, invented ranks; scipy)', () => {
  const tau = kendallTau([7, 4, 3, 10, 6, 2, 9, 8, 1, 5], [5, 7, 3, 10, 1, 9, 6, 2, 8, 4]);
  expect(tau).toMatchObject({ concordant: 21, discordant: 24 });
  expect(tau.value).toBeCloseTo(-0.066667, 6);
});

test('Kendall 1938 by definition: one swap of neighbours among four, 1 - 2/6 = 0.666667 (DER)', () => {
  expect(kendallTau([1, 2, 3, 4], [1, 3, 2, 4]).value).toBeCloseTo(0.666667, 6);
});
