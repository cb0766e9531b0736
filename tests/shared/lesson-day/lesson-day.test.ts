import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import {
  checkDay,
  compileLesson,
  dayMoments,
  stationCards,
  type Plan,
} from '../../../shared/compile/index.ts';
import { planDay, type Day, type DayOutcome } from '../../../shared/day/index.ts';
import { draftVisit } from '../../../shared/drafting/index.ts';
import { lessonDay } from '../../../shared/lesson-day/index.ts';
import type { DayParts } from '../../../shared/library/day-file.ts';
import { highsSolver } from '../../../src/command/highs-solver.ts';
import { demoLessons, demoLibrary } from '../../demo.ts';
import { brokenRules } from '../day/broken-rules.ts';
import { BLOCK } from '../lesson/lesson-text.ts';

const { safety } = demoLibrary;

const planOf = (text: string): Plan => {
  const { plan, problems } = compileLesson('a.md', text, demoLibrary, 'a');
  if (plan === null) throw new Error(JSON.stringify(problems));
  return plan;
};
const made = (plan: Plan, pupils = 30, taken: readonly string[] = []) =>
  lessonDay(safety, plan, { file: 'a.md', pupils, taken });
const textOf = (plan: Plan, pupils?: number): string => made(plan, pupils).text ?? '';
// The file as any YAML reader reads it; what it holds is checked by `checkDay`.
const partsOf = (text: string): DayParts => parse(text) as DayParts;
const dayOf = (text: string): Day => {
  const { value, problems } = checkDay('days/a.yaml', text, safety);
  expect(problems).toEqual([]);
  if (value === null) throw new Error(text);
  return value;
};
const solved = async (day: Day): Promise<DayOutcome> => planDay(day, await highsSolver(20));

const lessonOf = (head: string, blocks = BLOCK): string =>
  `---\ntitle: Six pits\nsite: wendle-marsh\n${head}---\nWords.\n\n${blocks}`;
const blocksOf = (count: number, minutes: number): string =>
  Array.from({ length: count }, (_, index) =>
    BLOCK.replace('minutes: 8', `minutes: ${minutes}`).replace('Who made this?', `Table ${index + 1}`),
  ).join('\n');

/** What the lesson file says, read from its text and by no code of the product. */
const said = (text: string) => ({
  bands: (/^bands: \[(.+)\]$/m.exec(text)?.[1] ?? '').split(', ').map((band) => band.split('-').map(Number)),
  titles: [...text.matchAll(/^```[a-z]+\ntitle: (.+)$/gm)].map(([, title]) => title ?? ''),
  minutes: [...text.matchAll(/^```[a-z]+\n[^`]*?^minutes: (\d+)$/gm)].map(([, minutes]) => Number(minutes)),
});

describe.each(demoLessons)('a day of the demo lesson $id', ({ text }) => {
  const plan = planOf(text);
  const day = textOf(plan);
  const parts = partsOf(day);
  const { bands, titles, minutes } = said(text);

  test('reads without a problem, and each activity is a station under its title', () => {
    expect(dayOf(day).stations.map(({ name }) => name)).toEqual(expect.arrayContaining(titles));
    expect(titles.length).toBeGreaterThan(0);
    expect(made(plan).leftOut).toEqual([]);
  });

  test('ages and minutes are those of the lesson', () => {
    const youngest = Math.min(...bands.map(([from]) => from ?? 0));
    const last = Math.max(...bands.map(([, to]) => to ?? 0)) - 1;
    for (const group of Object.values(parts.groups)) expect(group.ages).toBe(`${youngest}-${last}`);
    const lasts = dayOf(day).slots.map(({ fromMinute, toMinute }) => toMinute - fromMinute);
    expect([...new Set(lasts)]).toEqual([Math.max(...minutes)]);
    for (const [index, title] of titles.entries())
      expect(day).toMatch(
        new RegExp(`name: "?${title.replace('?', '\\?')}.* # ${minutes[index]} minutes in`),
      );
  });

  test('thirty pupils are shared out, and every group fits every station', () => {
    const groups = Object.values(parts.groups);
    expect(groups.reduce((sum, { pupils }) => sum + pupils, 0)).toBe(30);
    for (const { pupils } of Object.values(parts.stations))
      for (const group of groups) expect(group.pupils).toBeLessThanOrEqual(pupils);
  });

  test('adults hold: what a station card asks is there, and the plan gives it to each station', async () => {
    const cards = stationCards(safety, plan);
    expect(Object.values(parts.stations).map(({ adults }) => adults)).toEqual(
      cards.map(({ supervisors, rule }) => supervisors + rule.practitioners),
    );
    const read = dayOf(day);
    const outcome = await solved(read);
    if (!('plan' in outcome)) throw new Error(outcome.status);
    expect(brokenRules(read, outcome.plan)).toEqual([]);
    const asked = { frameworks: [], localChildrenPerAdult: null, setting: 'outdoors' } as const;
    const moments = dayMoments(safety, read, outcome.plan, asked);
    for (const { slot, parts: at } of moments)
      for (const { station, report } of at) {
        const number = read.stations.findIndex(({ name }) => name === station);
        const there = outcome.plan.crew.filter((row) => row[slot] === number).length;
        if (number >= 0)
          expect(there).toBeGreaterThanOrEqual(
            report.adults.stationSupervisors + report.adults.practitioners,
          );
      }
  });

  test('says what is a stand-in, and from which lesson it is', () => {
    const above = (key: string): string => new RegExp(`((?:^#.*\n)+)${key}:`, 'm').exec(day)?.[1] ?? '';
    for (const key of ['slots', 'groups', 'adults']) expect(above(key).toLowerCase()).toContain('stand-in');
    expect(above('stations')).toContain('each place is a stand-in');
    expect(day).toMatch(/^must-see: .*# A stand-in/m);
    expect(/^setting: .*# (.*)$/m.exec(day)?.[1]).toMatch(
      plan.visit === undefined ? /^a stand-in/ : /^as the lesson/,
    );
    expect(day).toMatch(/^# Made from the lesson “.+” \(a\.md\) as it stood then\.$/m);
    expect(parts.title).toBe(`A day with “${plan.title}”`);
    expect(parts.note).toContain(plan.title);
    expect(parts.note).toContain('not carried over');
  });
});

describe('a day of a drafted lesson', () => {
  const site = demoLibrary.sites.find(({ id }) => id === 'wendle-marsh');
  test.each([
    { bands: ['7-9', '9-11'], minutes: 60, seed: '5' },
    { bands: ['5-7'], minutes: 40, seed: '2' },
    { bands: ['11-14'], minutes: 90, seed: '9' },
  ] as const)('$bands, $minutes minutes: read, and planned', async ({ bands, minutes, seed }) => {
    if (site === undefined) throw new Error('no site');
    const { text } = draftVisit(demoLibrary, site, { bands, minutes, seed });
    const plan = planOf(text ?? '');
    const day = dayOf(textOf(plan));
    expect(day.stations.map(({ name }) => name)).toEqual(plan.activities.map(({ title }) => title));
    const outcome = await solved(day);
    if (!('plan' in outcome)) throw new Error(outcome.status);
    expect(brokenRules(day, outcome.plan)).toEqual([]);
  });
});

describe('what cannot be', () => {
  test('a lesson of words alone gives no day, and says so', () => {
    const day = made(planOf(lessonOf('bands: [7-9]\nminutes: 30\n', '')));
    expect(day.text).toBeNull();
    expect(day.leftOut).toEqual([
      '“Six pits” has nothing that can be a station of a day: put an activity in, or say in its head what runs beside it.',
    ]);
  });

  test('a table where none may stand is left out, and what may be there stays', () => {
    const visit = 'visit:\n  setting: construction-site\n  stations:\n    - { kind: site-tour }\n';
    const day = made(planOf(lessonOf(`bands: [7-9]\nminutes: 30\n${visit}`)));
    expect(day.leftOut).toEqual([
      '“Who made this?” is left out. Sorting, ordering, hours, barter, comparing (screen or paper) cannot run in the setting "construction site".',
    ]);
    expect(dayOf(day.text ?? '').stations.map(({ name, kind }) => [name, kind])).toEqual([
      ['Tour of a live excavation', 'site-tour'],
    ]);
    expect(day.text).toContain('# “Who made this?” is left out.');
    expect(partsOf(day.text ?? '').note).toContain('“Who made this?” is left out.');
    expect(day.text).toContain('the lesson says no minutes');
  });

  test('stations for which a school day is too short: the file reads, and the planner tells why not', async () => {
    const day = textOf(planOf(lessonOf('bands: [11-14]\nminutes: 180\n', blocksOf(3, 60))), 90);
    // Three groups of thirty, three stations of an hour: five hours and a half hold five such slots, so all is well.
    expect((await solved(dayOf(day))).status).toBe('optimal');
    const long = textOf(planOf(lessonOf('bands: [11-14]\nminutes: 180\n', blocksOf(2, 90))), 120);
    expect(dayOf(long).slots).toHaveLength(3);
    const outcome = await solved(dayOf(long));
    expect(outcome.status).toBe('impossible');
    expect(outcome.status === 'impossible' && outcome.reasons.length).toBeGreaterThan(0);
    expect(partsOf(long).note).toContain('has room for 3 slots of this length');
  });

  test.each([1, 7, 30, 31, 200])('%i pupils: none is lost and no group is empty', (pupils) => {
    const { groups } = partsOf(textOf(planOf(demoLessons[0]?.text ?? ''), pupils));
    const sizes = Object.values(groups).map((group) => group.pupils);
    expect(sizes.reduce((sum, size) => sum + size, 0)).toBe(pupils);
    expect(Math.min(...sizes)).toBeGreaterThan(0);
  });

  test('forty activities: twenty-four are stations, and each other is named', () => {
    const day = made(planOf(lessonOf('bands: [7-9]\nminutes: 180\n', blocksOf(40, 2))));
    expect(dayOf(day.text ?? '').stations).toHaveLength(24);
    expect(day.leftOut).toHaveLength(16);
    expect(day.leftOut[0]).toBe('“Table 25” is left out. A day holds 24 stations at most.');
    // More adults than a day file names.
    expect(day.text).toContain('Adults are not planned here');
    expect(partsOf(day.text ?? '').adults).toBeUndefined();
  });
});

test.each([
  'Who: "made" #this? - [no] {yes} & *all',
  '@home, 100%',
  "'twas | long > ago",
  'true',
  '12',
  '\\ back',
])('a title such as %s comes through', (title) => {
  const text = lessonOf('bands: [7-9]\nminutes: 30\n')
    .replace('title: Six pits', `title: ${JSON.stringify(title)}`)
    .replace('title: Who made this?', `title: ${JSON.stringify(`${title}\n# more`)}`);
  const parts = partsOf(textOf(planOf(text)));
  expect(parts.title).toBe(`A day with “${title}”`);
  expect(Object.values(parts.stations).map(({ name }) => name)).toEqual([`${title} # more`]);
  dayOf(textOf(planOf(text)));
});

test('two stations of one name are told apart, as are two days of one lesson', () => {
  const visit =
    'visit:\n  setting: dig-site\n  stations:\n    - { kind: knapping-demo }\n    - { kind: knapping-demo }\n';
  const plan = planOf(lessonOf(`bands: [7-9]\nminutes: 30\n${visit}`));
  const day = dayOf(textOf(plan));
  expect(day.stations.map(({ id }) => id)).toEqual(['sort-1', 'knapping-demo', 'knapping-demo-2']);
  expect(day.stations.map(({ name }) => name).slice(1)).toEqual([
    'Knapping demonstration',
    'Knapping demonstration 2',
  ]);
  const first = made(plan).title;
  expect(made(plan, 30, [first]).title).toBe('A day with “Six pits” (2)');
  expect(made(plan, 30, [first, 'A day with “Six pits” (2)']).title).toBe('A day with “Six pits” (3)');
});

test('an activity called lunch or free does not pass for a slot with nothing on', () => {
  const blocks = blocksOf(2, 8)
    .replace('finds:', 'id: lunch\nfinds:')
    .replace(/finds:(?![^]*finds:)/, 'id: free\nfinds:');
  const day = dayOf(textOf(planOf(lessonOf('bands: [7-9]\nminutes: 30\n', blocks))));
  expect(day.stations.map(({ id }) => id)).toEqual(['lunch-2', 'free-2']);
});
