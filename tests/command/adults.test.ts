import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { demoLibrary } from '../demo.ts';
import { newFolder, runPitlore } from './run-pitlore.ts';

const LESSON = 'content/lessons/who-made-this.md';

test('a class at its lesson: the strictest figure rules, and the working says so', () => {
  const argv = [
    'adults',
    LESSON,
    '--pupils',
    '30',
    '--ages',
    '7-9',
    '--framework',
    'england-visits',
    '--json',
  ];
  const { code, out, err } = runPitlore(argv);
  expect({ code, err }).toEqual({ code: 0, err: '' });
  const said = JSON.parse(out);
  // DfEE 1998: 1 to 6 for school years 1 to 3.
  expect(said).toMatchObject({ ratioAdults: 5, stationSupervisors: 2, totalAdults: 5, refusals: [] });
  expect(said.because.join('\n')).toContain('decided by the ratio');
});

test('a situation in a file: refusals are told with their mend, and the numbers stand', () => {
  const file = join(newFolder(), 'visit.yaml');
  writeFileSync(
    file,
    'children: 10\nyoungest: 15\nframeworks: [england-visits]\nsetting: outdoors\nstations: [{ kind: knappingDemo, childrenAtOnce: 10, pupilsFlake: true, spectatorsAtMetres: 7 }]\n',
  );
  const { code, out } = runPitlore(['adults', '--situation', file]);
  expect(code).toBe(0);
  expect(out).toContain('At least 3 adults');
  expect(out).toContain('X01 (refuse): Children never knap.');
  expect(out).toContain('Local law and your employer’s policy come first');
});

test.each([
  { name: 'a key misspelt', text: 'childern: 10\n', told: 'write "children"' },
  {
    name: 'a framework nobody knows',
    text: 'children: 9\nyoungest: 9\nframeworks: [england-visit]\nsetting: hall\nstations: []\n',
    told: 'write "england-visits"',
  },
])('$name in a situation is told with its mend', ({ text, told }) => {
  const file = join(newFolder(), 'visit.yaml');
  writeFileSync(file, text);
  const { code, out, err } = runPitlore(['adults', '--situation', file]);
  expect({ code, out }).toEqual({ code: 1, out: '' });
  expect(err).toContain(told);
});

test.each([
  [['adults', LESSON]],
  [['adults', LESSON, '--pupils', 'many']],
  [['adults', LESSON, '--pupils', '30', '--ages', '9-7']],
  [['adults', LESSON, '--pupils', '30', '--framework', 'mars']],
  [['adults', LESSON, '--pupils', '30', '--framework', 'local']],
  [['hazards']],
])('%j is not understood', (argv) => {
  expect(runPitlore(argv)).toMatchObject({ code: 2, out: '' });
});

test('the hazards of a lesson, each control with how it is known', () => {
  const { code, out } = runPitlore(['hazards', LESSON, '--json']);
  expect(code).toBe(0);
  const rows: readonly { readonly id: string; readonly controls: readonly { readonly status: string }[] }[] =
    JSON.parse(out);
  expect(rows.map(({ id }) => id)).toContain('children-taking-it-home');
  expect(rows.every(({ controls }) => controls.every(({ status }) => status !== ''))).toBe(true);
  expect(runPitlore(['hazards', LESSON]).out).toContain('Children never knap');
});

test('a lesson that states stations: the verbs count them, and a refused one is told at its place', () => {
  const stated = 'content/lessons/order-of-an-axe.md';
  const said = JSON.parse(runPitlore(['adults', stated, '--pupils', '30', '--json']).out);
  // Ring of 15 at 1 to 15, handling of 8 at 1 to 8 from age 11, 7 at tables at 1 to 15; a practitioner at each station.
  expect(said).toMatchObject({
    stationSupervisors: 3,
    supervisors: 3,
    practitioners: 2,
    totalAdults: 5,
    refusals: [],
  });
  const rows: readonly { readonly id: string }[] = JSON.parse(runPitlore(['hazards', stated, '--json']).out);
  expect(rows.map(({ id }) => id)).toEqual(
    expect.arrayContaining(['flying-chips', 'sharp-edges', 'trench-edge']),
  );
  const file = join(newFolder(), 'refused.md');
  const visit = 'visit: { setting: outdoors, stations: [{ kind: mock-dig, pupils: [flake] }] }';
  writeFileSync(
    file,
    `---\ntitle: A visit\nsite: wendle-marsh\nbands: [14-16]\nminutes: 10\n${visit}\n---\n`,
  );
  const { code, out, err } = runPitlore(['adults', file, '--pupils', '9', '--content', 'content']);
  expect({ code, out }).toEqual({ code: 1, out: '' });
  expect(err).toContain('rule X01: children never knap');
});

test('a day: the strictest moment is told with its bells, and what each group asks for there', () => {
  const file = 'content/days/class-morning.yaml';
  const said = JSON.parse(runPitlore(['adults', file, '--json']).out);
  const totals: readonly number[] = said.slots.map(({ totalAdults }: { totalAdults: number }) => totalAdults);
  expect(said.slots).toHaveLength(6);
  expect(said.strictest.totalAdults).toBe(Math.max(...totals));
  expect(said.strictest.bells).toBe(said.slots[totals.indexOf(Math.max(...totals))].bells);
  // Five groups of six, two adults each at least; the pit and the grinder have practitioners of their own.
  expect(said.strictest).toMatchObject({ supervisors: 10, practitioners: 2, totalAdults: 12 });
  const { code, out } = runPitlore(['adults', file]);
  expect(code).toBe(0);
  expect(out).toContain(`At least 12 adults at the strictest moment, ${said.strictest.bells}`);
  expect(out).toContain('Local law and your employer’s policy come first');
});

test('a day that has no timetable gives no number', () => {
  const file = join(newFolder(), 'day.yaml');
  writeFileSync(
    file,
    'title: Too much\nstatus: invented\nslots: [{ from: "09:00", to: "09:20" }]\nmust-see: [pit, pots]\ngroups: { a: { name: A, pupils: 6, ages: 7-8, arrives: "09:00", leaves: "10:00" } }\nstations: { pit: { name: Pit, place: field, pupils: 9 }, pots: { name: Pots, place: field, pupils: 9, kind: blunt-handling } }\n',
  );
  const { code, out, err } = runPitlore(['adults', file]);
  expect({ code, out }).toEqual({ code: 1, out: '' });
  expect(err).toContain('see why with pitlore day');
});

test('a kind of station nobody knows is told at its place in a day', () => {
  const file = join(newFolder(), 'day.yaml');
  writeFileSync(
    file,
    'title: A day\nstatus: invented\nslots: [{ from: "09:00", to: "09:20" }]\ngroups: { a: { name: A, pupils: 6, ages: 7-8, arrives: "09:00", leaves: "10:00" } }\nstations: { pit: { name: Pit, place: field, pupils: 9, kind: blunt-handing } }\n',
  );
  const { code, err } = runPitlore(['adults', file]);
  expect(code).toBe(1);
  expect(err).toContain('day.yaml:5:');
});

test('the hazards of a situation in a file', () => {
  const file = join(newFolder(), 'visit.yaml');
  writeFileSync(
    file,
    'children: 10\nyoungest: 8\nframeworks: [england-visits]\nsetting: outdoors\nstations: [{ kind: pigment, childrenAtOnce: 10 }]\n',
  );
  const { code, out } = runPitlore(['hazards', '--situation', file, '--json']);
  expect(code).toBe(0);
  const rows: readonly { readonly id: string }[] = JSON.parse(out);
  const hazard = demoLibrary.safety.hazards.find(({ arises }) => arises.stations.includes('pigment'));
  expect(rows.map(({ id }) => id)).toContain(hazard?.id);
  expect(rows.map(({ id }) => id)).not.toContain('flying-chips');
  writeFileSync(file, 'childern: 10\n');
  expect(runPitlore(['hazards', '--situation', file])).toMatchObject({ code: 1, out: '' });
});
