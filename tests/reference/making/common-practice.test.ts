import { expect, test } from 'vitest';
import { figures, head, make, off, small } from './model.ts';
import { groundVolumeCm3, surfaceCm2 } from '../../../shared/making/size.ts';

test('common practice, no source (CP): an experienced knapper roughs out a small flint axe in about 12 to 15 minutes', () => {
  const { massGrams, knappingMinutes } = make({ ...small, skill: 'experienced' });
  expect(knappingMinutes.middle).toBeGreaterThanOrEqual(12);
  expect(knappingMinutes.middle).toBeLessThanOrEqual(15);
  // Worked by hand from the formulae, to 1 per cent.
  expect(off(massGrams.middle, 245.3)).toBeLessThan(0.01);
  expect(off(knappingMinutes.low, 6.36)).toBeLessThan(0.01);
  expect(off(knappingMinutes.middle, 13.3)).toBeLessThan(0.01);
  expect(off(knappingMinutes.high, 27.9)).toBeLessThan(0.01);
});

test('common practice, no source (CP): grinding and polishing a small axe takes up to about 20 hours', () => {
  const axe = { ...small, preform: 'good', extent: 'full', finish: 'satin', grinder: 'wet-sandstone' };
  const { grindingHours } = make(axe);
  expect(grindingHours.middle).toBeLessThanOrEqual(20);
  expect(grindingHours.high).toBeGreaterThanOrEqual(20);
  expect(off(surfaceCm2(figures, head(axe)), 122.1)).toBeLessThan(0.01);
  expect(off(groundVolumeCm3(figures, head(axe)), 15.88)).toBeLessThan(0.01);
  expect(off(grindingHours.low, 4.07)).toBeLessThan(0.01);
  expect(off(grindingHours.middle, 10)).toBeLessThan(0.01);
  expect(off(grindingHours.high, 24.8)).toBeLessThan(0.01);
});
