import { describe, expect, test } from 'vitest';
import { stream, uniformBelow } from '../../shared/chance/index.ts';
import {
  dayProgramme,
  measurePlan,
  planDay,
  tellRule,
  whenWet,
  type Day,
  type DayPlan,
} from '../../shared/day/index.ts';
import { highsSolver } from '../../src/command/highs-solver.ts';
import { brokenRules } from '../shared/day/broken-rules.ts';
import { adultOf, groupOf, slotsOf, squareDay, stationOf } from '../shared/day/make-day.ts';

const solve = await highsSolver(600);
const isPossible = (day: Day): boolean => solve(dayProgramme(day, 'any')).status === 'optimal';
const range = (count: number): number[] => Array.from({ length: count }, (_, index) => index);

/** By order[group][slot], the station. */
const planOf = (order: readonly (readonly number[])[]): DayPlan => ({
  groups: order.map((row) => row.map((station) => ({ kind: 'station', station }))),
  crew: [],
});
const walked = (day: Day, plan: DayPlan): number =>
  measurePlan(day, plan).reduce((minutes, { walkingMinutes }) => minutes + walkingMinutes, 0);

/** The rotation made by hand: group g in slot t goes to station (g + t) mod n. */
const rotation = (count: number): DayPlan =>
  planOf(range(count).map((group) => range(count).map((slot) => (group + slot) % count)));

const between = (count: number, minutes: (from: number, to: number) => number): Partial<Day> => ({
  walkMinutes: range(count).map((from) => range(count).map((to) => minutes(from, to))),
});
const ring = (count: number) =>
  between(count, (from, to) => Math.min((from - to + count) % count, (to - from + count) % count));
const line = (count: number) => between(count, (from, to) => Math.abs(from - to));

describe('1: n groups, n stations, n slots: the cyclic Latin square (by hand)', () => {
  test.each(range(10).map((index) => index + 1))('n = %i: nobody waits', (count) => {
    const day = squareDay(count, count, count);
    expect(brokenRules(day, rotation(count))).toEqual([]);
    const solved = solve(dayProgramme(day, 'idle'));
    expect(solved.status).toBe('optimal');
    expect(solved.bound).toBeCloseTo(0, 6);
  });
});

describe('2 to 4: pigeonholes (counted by hand)', () => {
  test.each([
    { day: squareDay(6, 6, 5), possible: false, why: 'six visits in five slots' },
    { day: squareDay(7, 6, 6), possible: false, why: 'a station needs seven slots' },
    { day: squareDay(7, 6, 7), possible: true, why: 'and has them' },
    { day: shutOnce(6), possible: false, why: '36 visits, 35 places' },
    { day: shutOnce(7), possible: true, why: '36 visits, 41 places' },
  ])('$why: $possible', ({ day, possible }) => {
    expect(isPossible(day)).toBe(possible);
    expect(
      planDay({ ...day, walkMinutes: day.walkMinutes.map((row) => row.map(() => 0)) }, solve).status,
    ).toBe(possible ? 'optimal' : 'impossible');
  });
});

/** Six groups and stations, one station shut in one slot. */
function shutOnce(slots: number): Day {
  const day = squareDay(6, 6, slots);
  return {
    ...day,
    stations: day.stations.map((at, index) => (index === 2 ? { ...at, shutSlots: [3] } : at)),
  };
}

test('5: six by six in eight slots with lunch in the fourth or fifth: each group waits one slot (counted by hand)', () => {
  const day = squareDay(6, 6, 8, { lunch: { slots: [3, 4], places: 60, place: 'p0' } });
  const eating = { ...day, groups: day.groups.map((group) => ({ ...group, hasLunch: true })) };
  const flat = { ...eating, walkMinutes: eating.walkMinutes.map((row) => row.map(() => 0)) };
  expect(planDay(flat, solve)).toMatchObject({
    status: 'optimal',
    minutes: { idleMinutes: 6 * 20, unevenMinutes: 0 },
  });
});

describe('6: any lists of must-sees need as many slots as the busiest group or station (König 1916, FM)', () => {
  const fits = (lists: readonly (readonly number[])[], stations: number, slots: number): boolean =>
    isPossible({
      ...squareDay(lists.length, stations, slots),
      slots: slotsOf(slots),
      groups: lists.map((list, index) =>
        groupOf(
          index,
          list.map((station) => `s${station}`),
        ),
      ),
    });

  test('eight groups with four each of five, wanted by 8, 5, 7, 5 and 7: eight slots and not seven', () => {
    const left = [1, 1, 1, 2, 3, 3, 3, 4];
    const lists = left.map((out) => range(5).filter((station) => station !== out));
    expect(range(5).map((station) => lists.filter((list) => list.includes(station)).length)).toEqual([
      8, 5, 7, 5, 7,
    ]);
    expect(fits(lists, 5, 8)).toBe(true);
    expect(fits(lists, 5, 7)).toBe(false);
  });

  test('forty lists at random', () => {
    const chance = stream('koenig');
    for (let round = 0; round < 40; round += 1) {
      const stations = 2 + uniformBelow(chance, 4);
      const lists = range(2 + uniformBelow(chance, 5)).map(() =>
        range(stations).filter(() => uniformBelow(chance, 3) > 0),
      );
      const busiest = Math.max(
        ...lists.map((list) => list.length),
        ...range(stations).map((station) => lists.filter((list) => list.includes(station)).length),
      );
      expect(busiest === 0 || fits(lists, stations, busiest)).toBe(true);
      expect(busiest > 1 && fits(lists, stations, busiest - 1)).toBe(false);
    }
  });
});

describe('7: stations on a ring, the short way: n(n - 1), and the rotation attains it (full search by hand, DER)', () => {
  test.each([
    [3, 6],
    [4, 12],
    [5, 20],
  ])('n = %i: %i', (count, least) => {
    const day = squareDay(count, count, count, ring(count));
    expect(planDay(day, solve)).toMatchObject({ status: 'optimal', minutes: { walkingMinutes: least } });
    expect(walked(day, rotation(count))).toBe(least);
  });
});

describe('8: stations in a line: 8, 16, 32; by rotation 8, 18, 32 (full search, DER)', () => {
  test.each([
    [3, 8, 8],
    [4, 16, 18],
    [5, 32, 32],
  ])('n = %i: %i, by rotation %i', (count, least, byHand) => {
    const day = squareDay(count, count, count, line(count));
    expect(planDay(day, solve)).toMatchObject({ status: 'optimal', minutes: { walkingMinutes: least } });
    expect(walked(day, rotation(count))).toBe(byHand);
  });
});

test('9: Williams square of four in a line: each station follows each other once, 20 in all (Williams 1949, FM)', () => {
  const order = range(4).map((group) => [0, 1, 3, 2].map((station) => (station + group) % 4));
  const pairs = order.flatMap((row) => row.slice(1).map((station, index) => `${row[index]}>${station}`));
  expect(new Set(pairs).size).toBe(12);
  const day = squareDay(4, 4, 4, line(4));
  expect(brokenRules(day, planOf(order))).toEqual([]);
  expect(walked(day, planOf(order))).toBe(20);
});

describe('10: six stations that run all day, one adult each, a slot off in eight (counted by hand)', () => {
  // Eight groups at six stations in eight slots: 48 visits fill every station in every slot.
  const staffed = (people: number): Day => ({
    ...squareDay(8, 6, 8),
    adults: range(people).map((index) => adultOf(index, 8, { mostInARow: 7 })),
  });
  test.each([
    [6, false],
    [7, true],
  ])('%i people: %s', (people, possible) => {
    expect(isPossible(staffed(people))).toBe(possible);
  });
  test('six people: 48 needed, 42 there', () => {
    expect(planDay(staffed(6), solve)).toMatchObject({
      status: 'impossible',
      reasons: [{ kind: 'crew-slots', needed: 48, there: 42 }],
    });
  });
});

test('11: one person for flint, flint in every slot, at most four in a row: person, skill and break are named', () => {
  const day: Day = {
    ...squareDay(8, 2, 8),
    stations: [stationOf(0, { name: 'Flint', skill: 'flint' }), stationOf(1)],
    adults: [
      adultOf(0, 8, { role: 'Knapper', skills: ['flint'], mostInARow: 4 }),
      adultOf(1, 8),
      adultOf(2, 8),
    ],
  };
  const outcome = planDay(day, solve);
  if (outcome.status !== 'impossible') throw new Error(outcome.status);
  // In any run of five slots one is off: of eight, seven at most.
  expect(outcome.reasons).toMatchObject([{ kind: 'skill-slots', skill: 'flint', needed: 8, there: 7 }]);
  const says = outcome.conflict?.rules.map((rule) => tellRule(day, rule));
  expect(says).toContain('Knapper has a slot off after 4 in a row.');
  expect(says).toContain('Flint needs an adult who can do flint.');
});

describe('12: two of six stations shut by rain, the four others must be seen by six groups (König 1916, FM)', () => {
  const wet = (slots: number) => {
    const day = squareDay(6, 6, slots);
    return whenWet({
      ...day,
      stations: day.stations.map((at, index) => ({ ...at, isOpenWhenWet: index > 1 })),
    });
  };
  test.each([
    [8, true],
    [6, true],
    [5, false],
  ])('%i slots: %s', (slots, possible) => {
    expect(wet(slots).leftOut).toEqual(['s0', 's1']);
    expect(wet(slots).day.groups[0]?.mustSee).toHaveLength(4);
    expect(isPossible(wet(slots).day)).toBe(possible);
  });
});
