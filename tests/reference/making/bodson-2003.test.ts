import { expect, test } from 'vitest';
import { make, off } from './model.ts';

test('Bodson 2003, Bulletin des Chercheurs de la Wallonie 42: 11-21 (DER: 184 h / 8 tools; a middling axe assumed): 23 h inside 5 to 95 per cent', () => {
  const { grindingHours } = make({
    form: 'long-oval',
    lengthMm: 160,
    widthMm: 60,
    thicknessMm: 35,
    preform: 'coarse',
    extent: 'full',
    finish: 'satin',
  });
  expect(grindingHours.low).toBeLessThan(23);
  expect(grindingHours.high).toBeGreaterThan(23);
  expect(off(grindingHours.low, 9.04)).toBeLessThan(0.01);
  expect(off(grindingHours.middle, 22.3)).toBeLessThan(0.01);
  expect(off(grindingHours.high, 55.2)).toBeLessThan(0.01);
});
