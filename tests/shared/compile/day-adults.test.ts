import { expect, test } from 'vitest';
import { dayMoments, plainStations, strictestMoment } from '../../../shared/compile/index.ts';
import type { Day, DayPlan } from '../../../shared/day/index.ts';
import { demoLibrary } from '../../demo.ts';

const rules = demoLibrary.safety;
const asked = { frameworks: ['england-visits'], localChildrenPerAdult: null, setting: 'outdoors' } as const;

const group = (name: string, pupils: number, youngestYears: number): Day['groups'][number] => ({
  id: name,
  name,
  pupils,
  youngestYears,
  arrivesMinute: 540,
  leavesMinute: 720,
  mustSee: [],
  hasLunch: false,
});
const station = (name: string, kind?: string): Day['stations'][number] => ({
  id: name,
  name,
  place: 'field',
  pupilsAtOnce: 30,
  groupsAtOnce: 2,
  shutSlots: [],
  isOpenWhenWet: true,
  fromYears: 0,
  adults: 1,
  skill: null,
  kit: [],
  sheetsEach: 0,
  ...(kind === undefined ? {} : { kind }),
});

const day: Day = {
  title: 'A day',
  date: null,
  slots: [
    { fromMinute: 540, toMinute: 560 },
    { fromMinute: 565, toMinute: 585 },
    { fromMinute: 590, toMinute: 610 },
  ],
  groups: [group('Elm', 12, 7), group('Oak', 12, 11)],
  stations: [station('The rope', 'knapping-demo'), station('The table')],
  adults: [],
  lunch: null,
  fixed: [],
  mayWalkLate: false,
  gate: null,
  places: ['field'],
  walkMinutes: [[0]],
};

const at = (number: number) => ({ kind: 'station', station: number }) as const;
const plan: DayPlan = {
  groups: [
    [at(1), at(0), { kind: 'away' }],
    [at(0), at(0), { kind: 'free' }],
  ],
  crew: [],
};
const moments = dayMoments(rules, day, plan, asked);

test('groups apart are counted each with its own youngest child, and added', () => {
  // Twelve from 7 at 1 to 6 (DfEE 1998): 2. Twelve from 11 at 1 to 15: the floor of 2, and a practitioner at the rope.
  expect(moments[0]).toMatchObject({ supervisors: 4, practitioners: 1, totalAdults: 5 });
});

test('groups at one station are one group, by its youngest child, with one practitioner', () => {
  // Twenty-four from 7 at 1 to 6: 4; the rope of 15 to 1 asks for 2 of them.
  expect(moments[1]).toMatchObject({ supervisors: 4, practitioners: 1, totalAdults: 5 });
  expect(moments[1]?.parts.map(({ groups }) => groups)).toEqual([['Elm', 'Oak']]);
});

test('who is away is not counted, and who has nothing on is', () => {
  expect(moments[2]).toMatchObject({ supervisors: 2, practitioners: 0, totalAdults: 2 });
  expect(moments[2]?.parts).toHaveLength(1);
});

test('the strictest moment wins, the first of those alike', () => {
  expect(strictestMoment(moments)?.slot).toBe(0);
  expect(strictestMoment([])).toBeNull();
});

test('a station without a kind counts as a table, and is told', () => {
  expect(moments[0]?.parts.find(({ station: name }) => name === 'The table')?.kind).toBe('table-activity');
  expect(plainStations(day)).toEqual(['The table']);
});

test('the setting a day file says is the one the refusals see', () => {
  const inside = dayMoments(rules, { ...day, setting: 'classroom' }, plan, asked);
  expect(inside[0]?.parts.flatMap(({ report }) => report.refusals.map(({ id }) => id))).toContain('X07');
  expect(moments[0]?.parts.flatMap(({ report }) => report.refusals)).toEqual([]);
});
