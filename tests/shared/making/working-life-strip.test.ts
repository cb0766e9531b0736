import { expect, test } from 'vitest';
import { workingLifeStrip } from '../../../shared/making/index.ts';
import { hourMarks } from '../../../shared/making/working-life-strip.ts';
import { figures, head, small } from '../../reference/making/model.ts';

test('a small flint axe: a quarter of an hour of knapping, ten hours of grinding, twelve of hafting, end to end', () => {
  const strip = workingLifeStrip(figures, head(small));
  expect(strip.segments.map(({ id }) => id)).toEqual([
    'find-nodule',
    'test-nodule',
    'rough-out',
    'thin',
    'trim',
    'grind',
    'polish',
    'cut-haft-wood',
    'shape-haft',
    'cut-socket',
    'fit',
    'bind',
  ]);
  const hours = (ids: readonly string[]): number =>
    strip.segments.filter(({ id }) => ids.includes(id)).reduce((sum, segment) => sum + segment.hours, 0);
  // By hand: 15.0 min; 1.4 × (4.12 + 3.05) h; 12 h.
  expect(hours(['rough-out', 'thin', 'trim'])).toBeCloseTo(0.25, 2);
  expect(hours(['grind', 'polish'])).toBeCloseTo(10.04, 1);
  expect(hours(['cut-haft-wood', 'shape-haft', 'cut-socket', 'fit', 'bind'])).toBeCloseTo(12, 9);
  expect(strip.grindingPerShaping).toBeCloseTo(40.2, 1);
  expect(strip.hours).toBeCloseTo(23.3, 1);
  expect(strip.total.middle).toBeGreaterThan(strip.hours);
});

test('segments touch, shares add up to one, and the blocks cover the strip', () => {
  const strip = workingLifeStrip(
    figures,
    head({ form: 'pecked-celt', stone: 'dolerite', mined: true, grinder: 'weighted-pull' }),
  );
  strip.segments.forEach((segment, index) => {
    expect(segment.fromHours).toBe(index === 0 ? 0 : strip.segments[index - 1]?.toHours);
  });
  expect(strip.segments.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
  expect(strip.branches.map(({ branch }) => branch)).toEqual(['stone', 'blade', 'haft']);
  expect(strip.branches[0]?.fromHours).toBe(0);
  expect(strip.branches.at(-1)?.toHours).toBe(strip.hours);
  expect(strip.segments.map(({ id }) => id)).toContain('peck');
});

test('an unground axe has no grinding on its strip and no ratio; a sawn one says what is not there', () => {
  const unground = workingLifeStrip(figures, head({ form: 'core-axe', extent: 'none' }));
  expect(unground.segments.map(({ id }) => id)).not.toContain('grind');
  expect(unground.grindingPerShaping).toBeNull();
  expect(workingLifeStrip(figures, head({ stone: 'nephrite' })).without).toEqual(['sawing']);
});

test.each([
  { hours: 23.3, marks: [0, 5, 10, 15, 20] },
  { hours: 0.9, marks: [0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9] },
  { hours: 100, marks: [0, 10, 20, 30, 40, 50, 60, 70, 80, 90, 100] },
  { hours: 0, marks: [0] },
])('marks along $hours hours', ({ hours, marks }) => {
  const found = hourMarks(hours);
  expect(found.length).toBe(marks.length);
  found.forEach((mark, index) => expect(mark).toBeCloseTo(marks[index] ?? Number.NaN, 9));
});
