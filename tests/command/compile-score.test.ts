import { rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { newFolder, runPitlore } from './run-pitlore.ts';

interface SortInPlan {
  readonly id: string;
  readonly kind: string;
  readonly trays: readonly { readonly id: string; readonly name: string }[];
  readonly finds: readonly { readonly id: string; readonly homes: readonly { readonly tray: string }[] }[];
}

const LESSON = 'content/lessons/who-made-this.md';

/** The plan of the lesson and its only sort. */
function planOf(seed: string): { readonly text: string; readonly sort: SortInPlan } {
  const { code, out } = runPitlore(['compile', LESSON, '--seed', seed]);
  expect(code).toBe(0);
  const [sort] = (JSON.parse(out) as { activities: SortInPlan[] }).activities;
  if (sort === undefined) throw new Error('the plan has no activity');
  return { text: out, sort };
}

const plan7 = planOf('7');

test('compile writes the plan as JSON: every activity has id and kind, a sort has finds and trays with ids', () => {
  const { text, sort } = plan7;
  expect(JSON.parse(text)).toMatchObject({ format: 'pitlore-plan/1', seed: '7' });
  expect(sort).toMatchObject({ id: 'sort-1', kind: 'sort' });
  expect(sort.trays.map(({ id }) => id)).toEqual(['flaked', 'ground', 'shaped-with-heat', 'not-made']);
  expect(sort.finds).toHaveLength(10);
  expect(sort.finds.every(({ id }) => /^P7-\d+$/.test(id))).toBe(true);
});

test('the same seed gives the same bytes in another process; another seed another order of the same finds', () => {
  expect(planOf('7').text).toBe(plan7.text);
  const orders = ['8', '9'].map((seed) => planOf(seed).sort.finds.map(({ id }) => id));
  expect(new Set(orders.map((ids) => ids.join())).size).toBe(2);
  for (const ids of orders) expect(ids.toSorted()).toEqual(plan7.sort.finds.map(({ id }) => id).toSorted());
});

test('a lesson with an error has no plan: exit 1, the problem on the other stream, nothing on this one', () => {
  const { code, out, err } = runPitlore(['compile', 'tests/content/broken/find-homeless.md']);
  expect({ code, out }).toEqual({ code: 1, out: '' });
  expect(err).toContain('find-homeless.md:11:33: error: ');
});

test('a lesson with a caution has a plan, and the caution goes to the other stream', () => {
  const { code, out, err } = runPitlore(['compile', 'tests/content/broken/tray-empty.md']);
  expect(code).toBe(0);
  expect(JSON.parse(out)).toHaveProperty('activities');
  expect(err).toContain('caution');
});

test('score gives activity, kind, score, guess and working: the record 1, one tray for all 0, nothing null', () => {
  const folder = newFolder();
  const { text, sort } = plan7;
  const play = (placed: Record<string, string>): unknown => ({ activity: sort.id, placed });
  const record = Object.fromEntries(sort.finds.map(({ id, homes }) => [id, homes[0]?.tray ?? '']));
  const plays = [
    play(record),
    play(Object.fromEntries(sort.finds.map(({ id }) => [id, 'ground']))),
    play({}),
    play(
      Object.fromEntries(
        sort.finds.map(({ id, homes }) => [
          id,
          sort.trays.find((tray) => tray.id === homes[0]?.tray)?.name ?? '',
        ]),
      ),
    ),
  ];
  writeFileSync(join(folder, 'plan.json'), text);
  writeFileSync(join(folder, 'plays.json'), JSON.stringify(plays));
  const { code, out, err } = runPitlore(['score', 'plan.json', 'plays.json'], folder);
  expect({ code, err }).toEqual({ code: 0, err: '' });
  const results = JSON.parse(out) as {
    activity: string;
    kind: string;
    score: number | null;
    guess: number | null;
    working: unknown;
  }[];
  expect(results.map((result) => Object.keys(result))).toEqual(
    plays.map(() => ['activity', 'kind', 'score', 'guess', 'working']),
  );
  expect(results.map(({ activity, kind }) => `${activity} ${kind}`)).toEqual(plays.map(() => 'sort-1 sort'));
  expect(results[0]?.score).toBeCloseTo(1, 9);
  expect(results[1]?.score).toBeCloseTo(0, 9);
  expect(results[2]?.score).toBeNull();
  // A tray may be named by the words on it, as paper answers are keyed in.
  expect(results[3]?.score).toBeCloseTo(1, 9);
  rmSync(folder, { recursive: true });
});

test('plays that do not fit are told one by one, the others are scored, and the exit is 1', () => {
  const folder = newFolder();
  writeFileSync(join(folder, 'plan.json'), plan7.text);
  const plays = [
    { activity: 'sort-9', placed: {} },
    { activity: 'sort-1', placed: 3 },
    { activity: 'sort-1', placed: {} },
  ];
  writeFileSync(join(folder, 'plays.json'), JSON.stringify(plays));
  const { code, out, err } = runPitlore(['score', 'plan.json', 'plays.json'], folder);
  expect(code).toBe(1);
  expect(JSON.parse(out)).toHaveLength(1);
  expect(err).toContain('play 1: expected an activity of the plan (sort-1); received "sort-9"');
  expect(err).toContain('play 2 does not fit its activity');
  rmSync(folder, { recursive: true });
});

test.each([
  { name: 'a plan that is no plan', plan: '{"format": "other", "activities": []}', plays: '[]', code: 1 },
  { name: 'a plan that is not JSON', plan: '{"format": ', plays: '[]', code: 1 },
  {
    name: 'plays that are no list',
    plan: '{"format": "pitlore-plan/1", "activities": []}',
    plays: '{}',
    code: 1,
  },
  {
    name: 'plays that are not there',
    plan: '{"format": "pitlore-plan/1", "activities": []}',
    plays: null,
    code: 2,
  },
])('$name: told with no stack of calls', ({ plan, plays, code }) => {
  const folder = newFolder();
  writeFileSync(join(folder, 'plan.json'), plan);
  if (plays !== null) writeFileSync(join(folder, 'plays.json'), plays);
  const ran = runPitlore(['score', 'plan.json', 'plays.json'], folder);
  expect({ code: ran.code, out: ran.out }).toEqual({ code, out: '' });
  expect(ran.err).not.toBe('');
  expect(ran.err).not.toContain('    at ');
  rmSync(folder, { recursive: true });
});

test('what has no right answer is told, and has no score', () => {
  const folder = newFolder();
  const { out: plan } = runPitlore(['compile', 'content/lessons/in-the-hand.md']);
  const plays = [
    { activity: 'handle-1', met: { 'P3-127': ['feel', 'look'] } },
    { activity: 'talk-1', before: { a: 9, b: 4 }, after: { a: 6, b: 7 } },
  ];
  writeFileSync(join(folder, 'plan.json'), plan);
  writeFileSync(join(folder, 'plays.json'), JSON.stringify(plays));
  const { code, out, err } = runPitlore(['score', 'plan.json', 'plays.json'], folder);
  expect({ code, err }).toEqual({ code: 0, err: '' });
  const [handled, talked] = JSON.parse(out) as Record<string, unknown>[];
  expect(handled).toMatchObject({ kind: 'handle', isScored: false });
  expect(handled).toHaveProperty('told.met', [{ piece: 'P3-127', senses: ['look', 'feel'] }]);
  expect(talked).toMatchObject({ kind: 'talk', isScored: false, told: { moved: 3 } });
  for (const result of [handled, talked]) expect(result).not.toHaveProperty('score');
  rmSync(folder, { recursive: true });
});
