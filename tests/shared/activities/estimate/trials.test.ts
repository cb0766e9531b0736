import { describe, expect, test } from 'vitest';
import { compiled, estimated, library } from './compiled.ts';

describe('published trials', () => {
  test.each([
    'grinding-hours',
    'knapping-minutes',
    'head-hours',
    'felling-minutes',
    'hafting-hours',
  ] as const)('none of %s is left out', (quantity) => {
    const subject =
      quantity === 'felling-minutes' ? '{ diameter-cm: 20 }' : '{ find: P7-165, length-mm: 150 }';
    const { trials } = estimated(`of: ${quantity}\nfor: ${subject}`);
    const known = library.making?.experiments.filter(({ of }) => of === quantity) ?? [];
    expect(trials.map(({ id }) => id)).toEqual(known.map(({ id }) => id));
    expect(known.length).toBeGreaterThan(0);
  });

  // No trial we know of lies outside; one of 400 hours for a small flint axe would.
  test('one outside what the model gives for its size is told as outside, not left out', () => {
    const { making } = library;
    const known = making?.experiments.find(({ id }) => id === 'grinding-practice');
    if (making === null || known === undefined) throw new Error('no figures');
    const planted = { ...known, id: 'planted', low: null, value: 400, high: null };
    const { plan } = compiled('of: grinding-hours\nfor: { find: P7-165, length-mm: 150 }', '[9-11]', 'seed', {
      ...library,
      making: { ...making, experiments: [...making.experiments, planted] },
    });
    const activity = plan?.activities[0];
    expect(activity?.kind === 'estimate' && activity.trials.at(-1)).toMatchObject({
      id: 'planted',
      place: 'above',
    });
  });

  test('every source named has its citation', () => {
    const { used, trials, citations } = estimated('of: axe-hours\nfor: { find: P7-165, length-mm: 150 }');
    for (const source of [...used, ...trials].flatMap(({ sources }) => sources)) {
      expect(citations[source]).toMatch(/\w/);
    }
  });
});
