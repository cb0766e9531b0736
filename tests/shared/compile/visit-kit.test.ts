import { expect, test } from 'vitest';
import { compileLesson, stationCards, visitKit, type Plan } from '../../../shared/compile/index.ts';
import { demoLessons, demoLibrary } from '../../demo.ts';

const rules = demoLibrary.safety;

function planOf(id: string): Plan {
  const lesson = demoLessons.find((each) => each.id === id);
  const { plan } = compileLesson(id, lesson?.text ?? '', demoLibrary, id);
  if (plan === null) throw new Error(`${id} does not compile`);
  return plan;
}

const kitOf = (plan: Plan) => visitKit(rules, plan, [10, 30], ['england-visits']);
const counted = (plan: Plan, thing: string): readonly number[] | undefined =>
  kitOf(plan).counts.find((row) => row.thing === thing)?.counts;

test('a lesson at tables: sheets for each pupil, cards for each pair, and no trays', () => {
  const plan = planOf('who-made-this');
  expect(counted(plan, 'pupil-sheets')).toEqual([10, 30]);
  expect(counted(plan, 'card-sets')).toEqual([5, 15]);
  expect(counted(plan, 'trays')).toBeUndefined();
  // DfEE 1998: 1 to 6 for school years 1 to 3, and two at least: each adult has the answers.
  expect(counted(plan, 'answers')).toEqual([2, 5]);
  expect(kitOf(plan).lists.map(({ id }) => id)).toEqual(['kit-base']);
});

test('a class that swaps as a whole shares one deal of cards', () => {
  expect(counted(planOf('a-gathering-for-all'), 'card-sets')).toEqual([1, 1]);
});

test('stations bring their trays, their pieces and their lists, summed over the visit', () => {
  const plan = planOf('order-of-an-axe');
  // Eight children at a handling table, two at a tray.
  expect(counted(plan, 'trays')).toEqual([4, 4]);
  expect(counted(plan, 'station-cards')).toEqual([3, 3]);
  expect(kitOf(plan).pieces).toEqual([
    { station: 'Handling real flint (E1 to E3)', types: ['polished-axe'], edge: 'E2' },
  ]);
  expect(kitOf(plan).lists.map(({ id }) => id)).toEqual(['kit-base', 'kit-knapping', 'kit-handling']);
});

test('eye protection is counted for those nearer than the line, and not beyond it', () => {
  const plan = planOf('order-of-an-axe');
  // The lesson's front row stands at 6 m, where the zone ends.
  expect(counted(plan, 'eye-sets')).toBeUndefined();
  const near: Plan = {
    ...plan,
    visit: {
      setting: 'dig-site',
      stations: [{ kind: 'knapping-demo', childrenAtOnce: 15, spectatorsAtMetres: 3 }],
    },
  };
  // Ten children and a supervisor; fifteen and a supervisor.
  expect(counted(near, 'eye-sets')).toEqual([11, 16]);
});

test('a card for each activity in its order, then one for each station', () => {
  const cards = stationCards(rules, planOf('order-of-an-axe'));
  expect(cards.map(({ activity, rule }) => activity?.title ?? rule.id)).toEqual([
    'Twelve steps to an axe',
    'knapping-demo',
    'sharp-handling',
  ]);
  expect(cards.map(({ supervisors }) => supervisors)).toEqual([2, 1, 1]);
});

test('a station’s card holds its own hazards, not those of the weather or of every visit', () => {
  const [table, knapping] = stationCards(rules, planOf('order-of-an-axe'));
  expect(table?.hazards).toEqual([]);
  const ids = knapping?.hazards.map(({ id }) => id) ?? [];
  expect(ids).toContain('flying-chips');
  expect(ids).not.toContain('children-taking-it-home');
  expect(knapping?.kit.map(({ id }) => id)).toEqual(['kit-knapping']);
});

test('real edges at a table called blunt make a card for handling real flint', () => {
  const plan: Plan = {
    ...planOf('order-of-an-axe'),
    visit: {
      setting: 'hall',
      stations: [{ kind: 'blunt-handling', childrenAtOnce: 6, finds: ['flake'], exposure: 'handle' }],
    },
  };
  expect(stationCards(rules, plan).at(-1)?.rule).toMatchObject({ id: 'sharp-handling', practitioners: 1 });
  expect(counted(plan, 'trays')).toEqual([3, 3]);
});
