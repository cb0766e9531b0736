import { expect, test } from 'vitest';
import { rubbingHours } from '../../../shared/making/grinding.ts';
import { groundVolumeCm3, massGrams, surfaceCm2 } from '../../../shared/making/size.ts';
import { evidence, figures, head, make, off, reckon, small } from './model.ts';

const common = {
  skill: 'experienced',
  preform: 'good',
  extent: 'full',
  finish: 'satin',
  grinder: 'wet-sandstone',
};

test('simulation of 200,000 draws, made apart from this code (DER): the whole small axe 12.6, 25.9, 57.6 h, mean 29.4', () => {
  const { totalHours } = make({ ...small, ...common });
  expect(off(totalHours.low, 12.6)).toBeLessThan(0.03);
  expect(off(totalHours.middle, 25.9)).toBeLessThan(0.03);
  expect(off(totalHours.high, 57.6)).toBeLessThan(0.03);
  expect(off(totalHours.mean, 29.4)).toBeLessThan(0.01);
});

test('Fenton 1960, matched moments by hand (DER): 11.5, 26.0, 58.9 h, agreed with to 12, 3 and 5 per cent', () => {
  const { totalHours } = make({ ...small, ...common });
  expect(off(totalHours.low, 11.5)).toBeLessThan(0.12);
  expect(off(totalHours.middle, 26)).toBeLessThan(0.03);
  expect(off(totalHours.high, 58.9)).toBeLessThan(0.05);
});

test('dimensions (DER): every length doubled gives 8 times the mass, 4 the surface and rubbing, 4.028 the knapping', () => {
  const one = head({ ...small, ...common });
  const two = head({ ...small, ...common, lengthMm: 240, widthMm: 104, thicknessMm: 54 });
  const rubbing = (axe: typeof one): number => rubbingHours(figures, axe, groundVolumeCm3(figures, axe));
  expect(off(massGrams(two) / massGrams(one), 8)).toBeLessThan(0.001);
  expect(off(surfaceCm2(figures, two) / surfaceCm2(figures, one), 4)).toBeLessThan(0.001);
  expect(off(rubbing(two) / rubbing(one), 4)).toBeLessThan(0.001);
  const knapping = make({ ...small, lengthMm: 240, widthMm: 104, thicknessMm: 54 }).knappingMinutes.middle;
  expect(off(knapping / make(small).knappingMinutes.middle, 4.028)).toBeLessThan(0.001);
});

test('definition (DER): an unground axe takes exactly no grinding', () => {
  const { grindingHours } = make({ form: 'core-axe', extent: 'none' });
  expect([grindingHours.low, grindingHours.middle, grindingHours.high]).toEqual([0, 0, 0]);
});

test('definition (DER): felling has no step at 10 cm: 4.743 min', () => {
  expect(off(reckon('felling-minutes', { diameterCm: 10 }).middle, 4.743)).toBeLessThan(0.001);
  const justBelow = reckon('felling-minutes', { diameterCm: 10 - 1e-10 }).middle;
  expect(Math.abs(justBelow - reckon('felling-minutes', { diameterCm: 10 }).middle)).toBeLessThan(1e-9);
});

test('eight published trials not fitted to (DER): their z scores average 0.11 and spread 0.61: no strong bias, spreads if anything wide', () => {
  const ids = [
    'roughing-out-shown',
    'grinding-shown',
    'grinding-1884',
    'grinding-eight-tools',
    'grinding-new-guinea',
    'felling-oak-1884',
    'felling-fir-1884',
    'felling-oak-practised',
  ];
  const scores = ids.map((id) => {
    const trial = evidence.experiments.find((experiment) => experiment.id === id);
    const published = trial?.value;
    if (trial === undefined || published === undefined || published === null) throw new Error(id);
    const model = reckon(trial.of, trial.inputs ?? {});
    return Math.log(published / model.middle) / (Math.log(model.high / model.low) / (2 * 1.6449));
  });
  const mean = scores.reduce((sum, z) => sum + z, 0) / scores.length;
  const rms = Math.sqrt(scores.reduce((sum, z) => sum + z * z, 0) / scores.length);
  expect(mean).toBeCloseTo(0.11, 1);
  expect(Math.abs(mean)).toBeLessThanOrEqual(0.5);
  expect(rms).toBeCloseTo(0.61, 1);
  expect(rms).toBeGreaterThanOrEqual(0.3);
  expect(rms).toBeLessThanOrEqual(1.2);
});
