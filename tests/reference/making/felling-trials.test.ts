import { expect, test } from 'vitest';
import { off, reckon } from './model.ts';

test('French Ministry of Culture, lake dwellings, "Felling trees" (RF): ash of 20 cm, small blade in a sleeve, 60 to 90 min', () => {
  const felling = reckon('felling-minutes', {
    diameterCm: 20,
    wood: 'ash',
    skill: 'experienced',
    axe: 'antler-sleeve',
  });
  expect(felling.middle).toBeGreaterThanOrEqual(60);
  expect(felling.middle).toBeLessThanOrEqual(90);
  expect(off(felling.low, 28)).toBeLessThan(0.01);
  expect(off(felling.middle, 75.1)).toBeLessThan(0.01);
  expect(off(felling.high, 202)).toBeLessThan(0.01);
});

test('Iversen 1956, Scientific American 194(3): 36-41 (FM): oak over 30 cm in 30 min by practised workers, inside 5 to 95 per cent', () => {
  const felling = reckon('felling-minutes', {
    diameterCm: 32,
    wood: 'oak',
    skill: 'master',
    axe: 'plain-haft',
  });
  expect(felling.low).toBeLessThan(30);
  expect(felling.high).toBeGreaterThan(30);
  expect(off(felling.low, 25.9)).toBeLessThan(0.01);
  expect(off(felling.middle, 69.5)).toBeLessThan(0.01);
  expect(off(felling.high, 186)).toBeLessThan(0.01);
});

test('Putz, Fletcher & Magee 2023, Forests 14(2): 202 (DER: 168 strokes at an assumed 35 a minute): a sapling in 4.8 min, inside 5 to 95 per cent', () => {
  const felling = reckon('felling-minutes', {
    diameterCm: 4.55,
    wood: 'oak',
    skill: 'learner',
    axe: 'plain-haft',
  });
  expect(felling.low).toBeLessThan(4.8);
  expect(felling.high).toBeGreaterThan(4.8);
  expect(off(felling.low, 1.17)).toBeLessThan(0.01);
  expect(off(felling.middle, 3.14)).toBeLessThan(0.01);
  expect(off(felling.high, 8.43)).toBeLessThan(0.01);
});
