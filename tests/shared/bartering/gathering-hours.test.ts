import { expect, test } from 'vitest';
import { GATHERING_GOODS } from '../../../shared/bartering/index.ts';
import { evidence, figures, make, off, reckon, small } from '../../reference/making/model.ts';

// The goods of a gathering carry their hours with them, so that a page needs no model. These tie the copy to the figures.
const hoursOf = (id: string) => GATHERING_GOODS.find((good) => good.id === id)?.hours;
const figure = (id: string) =>
  [...evidence.otherFigures, ...Object.values(figures.coefficients)].find((each) => each.id === id);

const request = {
  ...small,
  skill: 'experienced',
  preform: 'good',
  extent: 'full',
  finish: 'satin',
  grinder: 'wet-sandstone',
};

test('a hafted axe has the hours the model gives a small flint axe of 120 mm', () => {
  const { totalHours } = make(request);
  expect(off(hoursOf('axe')?.value ?? 0, totalHours.middle)).toBeLessThan(0.01);
  expect(off(hoursOf('axe')?.low ?? 0, totalHours.low)).toBeLessThan(0.12);
  expect(off(hoursOf('axe')?.high ?? 0, totalHours.high)).toBeLessThan(0.06);
});

test('a ground axehead has those of its head, with the finding and testing of the nodule', () => {
  const head = reckon('head-hours', request).middle;
  const nodule = hoursOf('flint')?.value ?? Number.NaN;
  expect(off(hoursOf('axehead')?.value ?? 0, head + nodule)).toBeLessThan(0.02);
});

test.each([
  { good: 'pick', figures: ['pick-hours'], perHour: 1 },
  { good: 'scraper', figures: ['scraper-minutes'], perHour: 60 },
  { good: 'arrowhead', figures: ['arrowhead-expert'], perHour: 60 },
  { good: 'knife', figures: ['knife-blade', 'knife-handle'], perHour: 60 },
])('$good: as $figures', ({ good, figures: ids, perHour }) => {
  const hours = ids.reduce((sum, id) => sum + (figure(id)?.middle ?? Number.NaN), 0) / perHour;
  expect(off(hoursOf(good)?.value ?? 0, hours)).toBeLessThan(0.02);
});

test('a nodule has the hours of finding and testing one', () => {
  const find = figure('find-hours');
  const tried = figure('test-minutes');
  if (find === undefined || tried === undefined) throw new Error('a figure is missing');
  const flint = hoursOf('flint');
  expect(flint?.value).toBeCloseTo(find.middle + tried.middle / 60, 2);
  expect(flint?.low).toBeCloseTo((find.low ?? 0) + (tried.low ?? 0) / 60, 2);
  expect(flint?.high).toBeCloseTo((find.high ?? 0) + (tried.high ?? 0) / 60, 2);
});
