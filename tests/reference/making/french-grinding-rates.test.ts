import { expect, test } from 'vitest';
import { rubbingHours } from '../../../shared/making/grinding.ts';
import { figures, head, off } from './model.ts';

test('two French public pages (RF): 5 to 20 g of flint ground away in an hour by hand with water', () => {
  const axe = head({ stone: 'flint', grinder: 'wet-sandstone' });
  const gramsAnHour = axe.stone.density.middle / rubbingHours(figures, axe, 1);
  expect(gramsAnHour).toBeGreaterThanOrEqual(5);
  expect(gramsAnHour).toBeLessThanOrEqual(20);
  expect(off(gramsAnHour, 10)).toBeLessThan(0.01);
});
