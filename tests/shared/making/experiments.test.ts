import { expect, test } from 'vitest';
import {
  type Experiment,
  placeExperiments,
  placeOn,
  quantityIds,
  standFor,
} from '../../../shared/making/index.ts';
import { evidence, figures, reckon, small } from '../../reference/making/model.ts';

test('every published trial is told of, placed or with the reason why not', () => {
  const placed = quantityIds.flatMap((quantity) => placeExperiments(figures, evidence.experiments, quantity));
  expect(placed.length).toBe(evidence.experiments.length);
  expect(
    placed.filter(({ kind }) => kind === 'too-little-told').map(({ experiment }) => experiment.id),
  ).toEqual(['felling-oak-turns', 'groove-quartzite']);
});

test('a trial outside the model’s range is told as outside, not hidden', () => {
  const quick: Experiment = {
    id: 'quick',
    about: 'An oak of 30 cm in five minutes',
    of: 'felling-minutes',
    inputs: { diameterCm: 30, wood: 'oak' },
    low: null,
    value: 5,
    high: null,
    unit: 'min',
    status: 'FM',
    sources: ['own-judgement'],
    use: 'independent',
  };
  const huge = { ...quick, id: 'huge', inputs: { diameterCm: 400, wood: 'oak' } };
  expect(placeExperiments(figures, [quick, huge], 'felling-minutes')).toMatchObject([
    { kind: 'placed', place: 'below' },
    { kind: 'beyond-model', refusals: [{ kind: 'out-of-range', input: 'diameterCm', from: 2, to: 120 }] },
  ]);
});

test('with the levers moved to a small axe, the 60 hours of a newspaper lie above', () => {
  const spread = reckon('grinding-hours', small);
  const sixty = evidence.experiments.find(({ id }) => id === 'grinding-upper');
  if (sixty === undefined) throw new Error('grinding-upper');
  expect(placeOn(spread, sixty)).toBe('above');
  expect(placeOn(spread, { low: 24, value: null, high: 60 })).toBe('inside');
  expect(placeOn(spread, { low: null, value: null, high: null })).toBeNull();
});

test('one number stands for a trial', () => {
  expect(standFor({ low: null, value: 73, high: null })).toBe(73);
  expect(standFor({ low: 12, value: null, high: 15 })).toBeCloseTo(13.416, 3);
  expect(standFor({ low: 30, value: null, high: null })).toBe(30);
  expect(standFor({ low: null, value: null, high: 20 })).toBe(20);
});
