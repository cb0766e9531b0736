import { expect, test } from 'vitest';
import { rubbingHours } from '../../../shared/making/grinding.ts';
import { figures, head, make, off } from './model.ts';

// Experimental-archaeology forum, thread "Stein des Anstosses", first post 19 January 2014 (RF): one axe, 539 g to 499 g.
test('forum 2014: 15.38 cm³ (40 g) of flint off under a sledge in 3 h 19 min of pure rubbing, within 3 per cent', () => {
  const hours = rubbingHours(figures, head({ grinder: 'quartzite-sledge' }), 15.38);
  expect(off(hours, 3.317)).toBeLessThan(0.03);
  expect(off(hours, 3.33)).toBeLessThan(0.01);
});

test('forum 2014: a blank of 193.0 × 51.4 × 38.1 mm weighs 539 g, within 10 per cent', () => {
  const { massGrams } = make({ lengthMm: 193, widthMm: 51.4, thicknessMm: 38.1, stone: 'flint' });
  expect(off(massGrams.middle, 539)).toBeLessThan(0.1);
  expect(off(massGrams.middle, 550.3)).toBeLessThan(0.01);
  expect(massGrams.low).toBeLessThan(539);
  expect(massGrams.high).toBeGreaterThan(539);
});
