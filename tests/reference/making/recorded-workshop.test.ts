import { expect, test } from 'vitest';
import { make, off } from './model.ts';

// Description of a recorded workshop in the Scottish project "Experimental Archaeology: Learning about Technologies in
// the Past" (RF). The size of the shown axe is not given; a long one is assumed.
const shown = { form: 'long-oval', lengthMm: 180, widthMm: 65, thicknessMm: 35, skill: 'experienced' };

test('recorded workshop: an axe head made ready for polishing before an audience in an hour lies inside 5 to 95 per cent', () => {
  const { massGrams, knappingMinutes } = make(shown);
  expect(knappingMinutes.low).toBeLessThan(60);
  expect(knappingMinutes.high).toBeGreaterThan(60);
  expect(off(massGrams.middle, 596.2)).toBeLessThan(0.01);
  expect(off(knappingMinutes.low, 23.1)).toBeLessThan(0.01);
  expect(off(knappingMinutes.middle, 48.3)).toBeLessThan(0.01);
  expect(off(knappingMinutes.high, 101)).toBeLessThan(0.01);
});

test('recorded workshop: 40 hours to polish it all over lie inside 5 to 95 per cent', () => {
  const { grindingHours } = make({ form: 'long-oval', preform: 'good', extent: 'full', finish: 'mirror' });
  expect(grindingHours.low).toBeLessThan(40);
  expect(grindingHours.high).toBeGreaterThan(40);
  expect(off(grindingHours.low, 12.3)).toBeLessThan(0.01);
  expect(off(grindingHours.middle, 30.4)).toBeLessThan(0.01);
  expect(off(grindingHours.high, 75)).toBeLessThan(0.01);
});
