import { expect, test } from 'vitest';
import { figures, make, off } from './model.ts';

test('Pelegrin 2012, as quoted in public summaries (RF): the first rough-out of a small axe takes 5 to 10 minutes', () => {
  const stage =
    make({ form: 'small-plain', skill: 'experienced' }).knappingMinutes.middle *
    figures.coefficients['knap-roughout-share'].middle;
  expect(stage).toBeGreaterThanOrEqual(5);
  expect(stage).toBeLessThanOrEqual(10);
  expect(off(stage, 6.93)).toBeLessThan(0.01);
});
