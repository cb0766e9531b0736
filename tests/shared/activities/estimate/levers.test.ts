import { describe, expect, test } from 'vitest';
import { leverTable } from '../../../../shared/activities/index.ts';
import { cellAt } from '../../../../shared/activities/scorers.ts';
import { estimated, library } from './compiled.ts';

const figures = library.making?.figures;
if (figures === undefined) throw new Error('no figures');

describe('the levers of a grinding', () => {
  const activity = estimated('of: grinding-hours\nfor: { find: P7-165, length-mm: 150 }');
  const { levers } = activity;
  const cells = leverTable(figures, activity);
  const at = (...options: readonly string[]): readonly number[] => {
    const places = levers.map((lever, index) => lever.options.findIndex(({ id }) => id === options[index]));
    const cell = cells[cellAt(levers, places)];
    if (cell === null || cell === undefined) throw new Error(`nothing at ${options.join(', ')}`);
    return cell;
  };

  test('only what moves it is offered: who knaps does not', () => {
    expect(levers.map(({ id }) => id)).toEqual(['size', 'stone', 'grinder']);
  });

  test('where it stands, the table has the record, to three digits', () => {
    const places = levers.map((lever) => lever.at);
    const { low, middle, high } = activity.record;
    expect(cells[cellAt(levers, places)]).toEqual(
      [low, middle, high].map((value) => Number(value.toPrecision(3))),
    );
  });

  test('there is a cell for every setting', () => {
    expect(cells).toHaveLength(levers.reduce((product, { options }) => product * options.length, 1));
  });

  // Figures of the making model: loose sand 0.75 of the speed of clean wet sandstone, rubbing only; bigger takes longer.
  test('sand makes it slower, and a larger axe takes longer', () => {
    const home = at('1', 'flint', 'wet-sandstone');
    expect(at('1', 'flint', 'wet-sandstone-sand')[1]).toBeGreaterThan(home[1] ?? 0);
    expect(at('1.7', 'flint', 'wet-sandstone')[1]).toBeGreaterThan(home[1] ?? 0);
    expect(at('1', 'fine-tuff', 'wet-sandstone')[1]).toBeLessThan(home[1] ?? 0);
  });
});

test('a stone that is not flaked is no option for the minutes of flaking', () => {
  const { levers } = estimated('of: knapping-minutes\nfor: { find: P7-165, length-mm: 150 }');
  expect(levers.find(({ id }) => id === 'stone')?.options.map(({ id }) => id)).toEqual([
    'flint',
    'fine-tuff',
  ]);
});

test('the lead may name the levers, and [] leaves them out', () => {
  const block = 'of: axe-hours\nfor: { find: P7-165, length-mm: 150 }';
  expect(estimated(`${block}\nlevers: [extent]`).levers.map(({ id }) => id)).toEqual(['extent']);
  expect(estimated(`${block}\nlevers: []`).levers).toEqual([]);
});
