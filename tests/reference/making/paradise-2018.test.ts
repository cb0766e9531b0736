import { expect, test } from 'vitest';
import { quantile } from '../../../shared/estimating/index.ts';
import { figures, make, off } from './model.ts';

// Paradise, May 2018, "A piece of PNG: Stone axes" (RF).
test('Paradise 2018: a New Guinea working axe ground and sharpened in 35 to 45 h, inside 5 to 95 per cent', () => {
  const { grindingHours } = make({
    form: 'long-oval',
    stone: 'hornfels',
    lengthMm: 200,
    widthMm: 80,
    thicknessMm: 30,
    preform: 'coarse',
    extent: 'full',
    finish: 'satin',
  });
  expect(grindingHours.low).toBeLessThan(35);
  expect(grindingHours.high).toBeGreaterThan(45);
  expect(off(grindingHours.low, 11.4)).toBeLessThan(0.01);
  expect(off(grindingHours.middle, 28.1)).toBeLessThan(0.01);
  expect(off(grindingHours.high, 69.4)).toBeLessThan(0.01);
});

test('Paradise 2018: hafting in 40 h is at most the 97.5 per cent end', () => {
  const haft = {
    middle: figures.coefficients['haft-hours'].middle,
    sigma: figures.spreads['spread-haft'].middle,
  };
  expect(off(quantile(haft, 0.975), 52.2)).toBeLessThan(0.01);
  expect(quantile(haft, 0.975)).toBeGreaterThanOrEqual(40);
  expect(off(make({}).haftingHours.high, 41.2)).toBeLessThan(0.01);
});
