import { expect, test } from 'vitest';
import {
  conflictSet,
  dayProgramme,
  easeRule,
  ruleKey,
  rulesOf,
  tellRule,
  type Day,
  type DayRule,
} from '../../../shared/day/index.ts';
import { editDay, readDay } from '../../../shared/library/index.ts';
import { highsSolver } from '../../../src/command/highs-solver.ts';
import { adultOf, randomDay, squareDay } from './make-day.ts';
import { writeDay } from './write-day.ts';

const solve = await highsSolver(600);

const read = (text: string): Day => {
  const { value, problems } = readDay('a.yaml', text);
  expect(problems.filter(({ grade }) => grade === 'error')).toEqual([]);
  if (value === null) throw new Error(text);
  return value;
};

/** Once eased, the rules that stood against one another can all hold; of groups at once, one more is let in a press. */
function isFreed(day: Day, rules: readonly DayRule[], rule: DayRule): boolean {
  const { edits } = easeRule(day, rule);
  const eased = read(editDay(writeDay(day), edits ?? []));
  const kept = new Set(rules.filter((other) => other.kind !== 'fixed').map(ruleKey));
  const still = rulesOf(eased).filter((other) => kept.has(ruleKey(other)));
  return solve(dayProgramme(eased, 'any', still)).status === 'optimal';
}

/** A day that cannot be because of one more kind of rule. */
const fixedDay: Day = {
  ...squareDay(2, 2, 2),
  fixed: [0, 1].map((group) => ({ group, slot: 0, at: { kind: 'station', station: 0 } }) as const),
};
const brokenDay: Day = {
  ...squareDay(2, 1, 3),
  stations: squareDay(2, 1, 3).stations.map((each) => ({ ...each, shutSlots: [0] })),
  adults: [adultOf(0, 3, { mostInARow: 1 })],
};
const neverFree: Day = { ...squareDay(1, 1, 2), adults: [adultOf(0, 2, { freeSlots: [] })] };
const lateDay: Day = {
  ...squareDay(1, 2, 2),
  walkMinutes: [
    [0, 9],
    [9, 0],
  ],
};
const lunchDay: Day = {
  ...squareDay(1, 1, 2),
  lunch: { slots: [0], places: 30, place: 'p0' },
  stations: squareDay(1, 1, 2).stations.map((each) => ({ ...each, shutSlots: [1] })),
  adults: [adultOf(0, 2, { hasLunch: true })],
};

test('a day written and read again is the same day', () => {
  for (let index = 0; index < 40; index += 1) {
    const day = randomDay(`ease-${index}`, { groups: 5, stations: 5, slots: 6 });
    const again = read(writeDay(day));
    const used = (of: Day) => of.walkMinutes.length;
    expect({ ...again, places: [], walkMinutes: [] }).toEqual({
      ...day,
      groups: day.groups.map((group) => ({ ...group, leavesMinute: 1439 })),
      date: null,
      places: [],
      walkMinutes: [],
    });
    expect(used(again)).toBeLessThanOrEqual(used(day));
  }
});

test('what frees a rule frees it: every press, on every conflict of days at random and of some made for it', () => {
  const seen = new Set<string>();
  const made = [fixedDay, brokenDay, neverFree, lateDay, lunchDay];
  const random = Array.from({ length: 80 }, (_, index) =>
    randomDay(`ease-${index}`, { groups: 5, stations: 5, slots: 6 }),
  );
  for (const wanted of [...made, ...random]) {
    const day = read(writeDay(wanted));
    const conflict = conflictSet(day, rulesOf(day), solve);
    for (const rule of conflict?.rules ?? []) {
      const { says, edits } = easeRule(day, rule);
      expect(says).not.toBe('');
      if (edits === null) expect(rule.kind).toBe('ages');
      else if (rule.kind !== 'groups-at-once')
        expect({
          day: day.title,
          rule: tellRule(day, rule),
          isFreed: isFreed(day, conflict?.rules ?? [], rule),
        }).toEqual({
          day: day.title,
          rule: tellRule(day, rule),
          isFreed: true,
        });
      seen.add(rule.kind);
    }
  }
  expect([...seen].toSorted()).toEqual([
    'adult-break',
    'adult-free',
    'adult-lunch',
    'ages',
    'crew',
    'fixed',
    'groups-at-once',
    'lunch',
    'lunch-places',
    'must-see',
    'present',
    'pupils-at-once',
    'shut',
    'skill',
    'walk',
  ]);
});

test('one more group at a time is enough where it is all that is asked', () => {
  const day = read(writeDay(squareDay(2, 1, 1)));
  const rules = conflictSet(day, rulesOf(day), solve)?.rules ?? [];
  const rule = rules.find(({ kind }) => kind === 'groups-at-once');
  expect(rule).toBeDefined();
  if (rule !== undefined) expect(isFreed(day, rules, rule)).toBe(true);
});
