import { expect, test } from 'vitest';
import { make, off, reckon } from './model.ts';

test('collector forum, full-grooved axe experiment (RF): 25 h of pecking and grinding lie inside 5 to 95 per cent', () => {
  const request = {
    form: 'pecked-celt',
    stone: 'dolerite',
    preform: 'pecked',
    extent: 'full',
    finish: 'smooth',
  };
  const hours = reckon('head-hours', request);
  expect(hours.low).toBeLessThan(25);
  expect(hours.high).toBeGreaterThan(25);
  const { massGrams, peckingHours, grindingHours } = make(request);
  expect(off(massGrams.middle, 646.8)).toBeLessThan(0.01);
  expect(off(peckingHours.middle, 15.2)).toBeLessThan(0.01);
  expect(off(grindingHours.middle, 5.73)).toBeLessThan(0.01);
  // Matched moments by hand: 10.1, 22.1, 48.7.
  expect(off(hours.low, 10.1)).toBeLessThan(0.12);
  expect(off(hours.middle, 22.1)).toBeLessThan(0.03);
  expect(off(hours.high, 48.7)).toBeLessThan(0.05);
});
