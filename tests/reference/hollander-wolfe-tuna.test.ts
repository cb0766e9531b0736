import { expect, test } from 'vitest';
import { kendallTau } from '../../shared/ordering/index.ts';

test('Hollander & Wolfe tuna data, worked in Habing, notes on rank correlation: tau 0.4444444 (RF)', () => {
  const lightness = [44.4, 45.9, 41.9, 53.3, 44.7, 44.1, 50.7, 45.2, 60.1];
  const panel = [2.6, 3.1, 2.5, 5.0, 3.6, 4.0, 5.2, 2.8, 3.8];
  expect(kendallTau(lightness, panel).value).toBeCloseTo(0.4444444, 7);
});
