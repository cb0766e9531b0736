import { describe, expect, test } from 'vitest';
import {
  carryPlan,
  conflictSet,
  handRotation,
  movedCells,
  planDay,
  rulesOf,
  tellRule,
  whenWet,
  type Day,
  type DayOutcome,
  type DayPlan,
} from '../../../shared/day/index.ts';
import { highsSolver } from '../../../src/command/highs-solver.ts';
import { brokenRules } from './broken-rules.ts';
import { adultOf, groupOf, randomDay, squareDay } from './make-day.ts';

const solve = await highsSolver(600);

const planned = (outcome: DayOutcome): Extract<DayOutcome, { plan: DayPlan }> => {
  if (!('plan' in outcome)) throw new Error(outcome.status);
  return outcome;
};
const at = (plan: DayPlan, group: number, slot: number): number | string => {
  const doing = plan.groups[group]?.[slot];
  return doing?.kind === 'station' ? doing.station : (doing?.kind ?? 'none');
};

/** Days at random that can be, with a plan of each. */
const days = Array.from({ length: 60 }, (_, index) =>
  randomDay(`hand-${index}`, { groups: 4, stations: 4, slots: 6 }),
).flatMap((day) => {
  const outcome = planDay(day, solve);
  return 'plan' in outcome ? [{ day, outcome }] : [];
});

describe('a slot fixed by hand', () => {
  test('is kept, and so is every rule; nothing else moves than has to', () => {
    expect(days.length).toBeGreaterThan(15);
    let moved = 0;
    for (const { day, outcome } of days) {
      // The first group goes to its last station first: whoever was there has to make room.
      const station = day.stations.findLastIndex(({ id }) => day.groups[0]?.mustSee.includes(id));
      const slot = outcome.plan.groups[0]?.findIndex(({ kind }) => kind !== 'away') ?? 0;
      if (station < 0 || slot < 0) continue;
      const fixed: Day = { ...day, fixed: [{ group: 0, slot, at: { kind: 'station', station } }] };
      const again = planDay(fixed, solve, { inHand: { plan: outcome.plan, fromSlot: 0 } });
      if (!('plan' in again)) continue;
      expect(at(again.plan, 0, slot)).toBe(station);
      expect({ day: day.title, broken: brokenRules(fixed, again.plan) }).toEqual({
        day: day.title,
        broken: [],
      });
      const fresh = planned(planDay(fixed, solve));
      const inHand = { plan: outcome.plan, fromSlot: 0 };
      expect(movedCells(again.plan, inHand)).toBeLessThanOrEqual(movedCells(fresh.plan, inHand));
      expect(again.movedCells).toBe(movedCells(again.plan, inHand));
      moved += again.movedCells ?? 0;
    }
    expect(moved).toBeGreaterThan(0);
  });

  test('two groups that change places: two swaps of two slots, counted by hand', () => {
    // Two groups, two stations, two slots: to put the first elsewhere, all four slots change.
    const day = squareDay(2, 2, 2);
    const plan: DayPlan = {
      groups: [
        [
          { kind: 'station', station: 0 },
          { kind: 'station', station: 1 },
        ],
        [
          { kind: 'station', station: 1 },
          { kind: 'station', station: 0 },
        ],
      ],
      crew: [],
    };
    const inHand = { plan, fromSlot: 0 };
    expect(planned(planDay(day, solve, { inHand })).movedCells).toBe(0);
    const fixed: Day = { ...day, fixed: [{ group: 0, slot: 0, at: { kind: 'station', station: 1 } }] };
    expect(planned(planDay(fixed, solve, { inHand })).movedCells).toBe(4);
  });

  test('that cannot be is named in the conflict', () => {
    const day: Day = {
      ...squareDay(2, 2, 2),
      fixed: [
        { group: 0, slot: 0, at: { kind: 'station', station: 1 } },
        { group: 1, slot: 0, at: { kind: 'station', station: 1 } },
      ],
    };
    const conflict = conflictSet(day, rulesOf(day), solve);
    expect(conflict?.rules.map((rule) => tellRule(day, rule))).toContain(
      'Group 0 is at Station 1 in slot 1, fixed by hand.',
    );
  });

  test('nothing on, and lunch, can be fixed too; in the rain a station that is shut is let go', () => {
    const day: Day = {
      ...squareDay(2, 2, 4),
      lunch: { slots: [1, 2], places: 40, place: 'p0' },
      groups: [groupOf(0, ['s0', 's1'], { hasLunch: true }), groupOf(1, ['s0', 's1'], { hasLunch: true })],
      fixed: [
        { group: 0, slot: 0, at: { kind: 'free' } },
        { group: 1, slot: 2, at: { kind: 'lunch' } },
      ],
    };
    const { plan } = planned(planDay(day, solve));
    expect([at(plan, 0, 0), at(plan, 1, 2)]).toEqual(['free', 'lunch']);
    const wet: Day = {
      ...day,
      stations: day.stations.map((station, index) => ({ ...station, isOpenWhenWet: index === 1 })),
      fixed: [0, 1].map(
        (station) => ({ group: 0, slot: station * 3, at: { kind: 'station', station } }) as const,
      ),
    };
    expect(whenWet(wet).day.fixed).toEqual([{ group: 0, slot: 3, at: { kind: 'station', station: 0 } }]);
  });
});

describe('a late bus', () => {
  test('what has happened stays, for groups and for adults, and the rules hold for what is to come', () => {
    let checked = 0;
    for (const { day, outcome } of days) {
      const fromSlot = 1;
      const late: Day = {
        ...day,
        groups: day.groups.map((group, index) =>
          index === 0
            ? { ...group, arrivesMinute: Math.max(group.arrivesMinute, day.slots[1]?.fromMinute ?? 0) }
            : group,
        ),
      };
      const again = planDay(late, solve, { inHand: { plan: outcome.plan, fromSlot } });
      if (!('plan' in again)) continue;
      checked += 1;
      expect({ day: day.title, broken: brokenRules(late, again.plan) }).toEqual({
        day: day.title,
        broken: [],
      });
      for (let group = 1; group < day.groups.length; group += 1)
        expect(at(again.plan, group, 0)).toBe(at(outcome.plan, group, 0));
    }
    expect(checked).toBeGreaterThan(8);
  });

  test('a must-see that is missed is seen later, and the rest is left alone', () => {
    const day = { ...squareDay(2, 2, 4), adults: [adultOf(0, 4), adultOf(1, 4)] };
    const before = planned(planDay(day, solve)).plan;
    const late: Day = {
      ...day,
      groups: day.groups.map((group, index) => (index === 0 ? { ...group, arrivesMinute: 565 } : group)),
    };
    const again = planned(planDay(late, solve, { inHand: { plan: before, fromSlot: 1 } }));
    expect(at(again.plan, 0, 0)).toBe('away');
    expect(again.plan.groups[1]).toEqual(before.groups[1]);
    expect(brokenRules(late, again.plan)).toEqual([]);
  });
});

test('a plan is carried by ids: what is no longer there leaves a slot free', () => {
  const day = { ...squareDay(2, 3, 3), adults: [adultOf(0, 3), adultOf(1, 3)] };
  const plan: DayPlan = {
    groups: [
      [0, 1, 2].map((station) => ({ kind: 'station', station }) as const),
      [1, 2, 0].map((station) => ({ kind: 'station', station }) as const),
    ],
    crew: [
      [0, 1, null],
      [1, 2, 0],
    ],
  };
  const later: Day = {
    ...day,
    groups: day.groups.toReversed(),
    stations: day.stations.slice(1),
    adults: day.adults.slice(1),
  };
  expect(carryPlan(day, plan, later)).toEqual({
    groups: [
      [{ kind: 'station', station: 0 }, { kind: 'station', station: 1 }, { kind: 'free' }],
      [{ kind: 'free' }, { kind: 'station', station: 0 }, { kind: 'station', station: 1 }],
    ],
    crew: [[0, 1, null]],
  });
});

describe('the rotation one would write by hand', () => {
  // dossier case 8 (full search by hand): four stations in a line, rotation 18 minutes, least 16.
  const line = (count: number): Day => ({
    ...squareDay(count, count, count),
    walkMinutes: Array.from({ length: count }, (_, from) =>
      Array.from({ length: count }, (__, to) => Math.abs(from - to)),
    ),
  });
  test.each([
    { count: 3, minutes: 8 },
    { count: 4, minutes: 18 },
    { count: 5, minutes: 32 },
  ])('$count stations in a line: $minutes minutes on foot (counted by hand)', ({ count, minutes }) => {
    const rotation = handRotation(line(count), solve);
    expect(rotation).toMatchObject({ kind: 'keeps', minutes: { walkingMinutes: minutes, idleMinutes: 0 } });
    if (rotation.kind === 'keeps') expect(brokenRules(line(count), rotation.plan)).toEqual([]);
  });

  test('keeps every rule wherever it is shown at all, and is never better than a plan shown best', () => {
    let kept = 0;
    for (const { day, outcome } of days) {
      const rotation = handRotation(day, solve);
      if (rotation.kind !== 'keeps') continue;
      kept += 1;
      expect({ day: day.title, broken: brokenRules(day, rotation.plan) }).toEqual({
        day: day.title,
        broken: [],
      });
      expect(rotation.minutes.idleMinutes).toBeGreaterThanOrEqual(outcome.minutes.idleMinutes);
    }
    expect(kept).toBeGreaterThan(3);
  });

  test('too few slots, or a rule in the way, is told', () => {
    expect(handRotation(squareDay(4, 3, 3), solve)).toEqual({ kind: 'too-few-slots' });
    const shut = squareDay(3, 3, 3);
    const day = { ...shut, stations: shut.stations.map((each) => ({ ...each, shutSlots: [0] })) };
    expect(handRotation(day, solve)).toEqual({ kind: 'breaks-rules' });
  });
});
