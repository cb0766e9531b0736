import { expect, test } from 'vitest';
import { make, off, reckon } from './model.ts';

// "Stone Axe (celt)", a maker's published log of one basalt axe made with stone tools only (DER: days read as 8 h).
test('Stone Axe (celt), a maker’s log: the haft in a day and a morning, 12 h, lies inside the middle half', () => {
  const { haftingHours } = make({});
  expect(haftingHours.lowerQuarter).toBeLessThan(12);
  expect(haftingHours.upperQuarter).toBeGreaterThan(12);
  expect(off(haftingHours.lowerQuarter, 7.24)).toBeLessThan(0.01);
  expect(off(haftingHours.middle, 12)).toBeLessThan(0.01);
  expect(off(haftingHours.upperQuarter, 19.9)).toBeLessThan(0.01);
});

test('Stone Axe (celt), a maker’s log: a large basalt head in a week and a day, 64 h, lies inside 5 to 95 per cent', () => {
  const request = {
    form: 'pecked-celt',
    stone: 'basalt',
    lengthMm: 200,
    widthMm: 80,
    thicknessMm: 50,
    preform: 'pecked',
    extent: 'full',
    finish: 'smooth',
  };
  const hours = reckon('head-hours', request);
  expect(hours.low).toBeLessThan(64);
  expect(hours.high).toBeGreaterThan(64);
  expect(off(make(request).massGrams.middle, 1369)).toBeLessThan(0.01);
  // Matched moments by hand: 16.9, 37.0, 80.9.
  expect(off(hours.low, 16.9)).toBeLessThan(0.12);
  expect(off(hours.middle, 37)).toBeLessThan(0.03);
  expect(off(hours.high, 80.9)).toBeLessThan(0.05);
});
