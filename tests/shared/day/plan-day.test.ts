import { describe, expect, test } from 'vitest';
import {
  conflictSet,
  countDay,
  dayProgramme,
  planDay,
  rulesOf,
  type Day,
  type DayOutcome,
  type DayPlan,
} from '../../../shared/day/index.ts';
import { highsSolver } from '../../../src/command/highs-solver.ts';
import { dayCases } from '../../bench/day-cases.ts';
import { brokenRules } from './broken-rules.ts';
import { adultOf, groupOf, randomDay, squareDay } from './make-day.ts';
import { searchDay } from './search-day.ts';

const solve = await highsSolver(600);

const planned = (outcome: DayOutcome): Extract<DayOutcome, { plan: DayPlan }> => {
  if (outcome.status !== 'optimal') throw new Error(outcome.status);
  return outcome;
};

test('the checker sees each kind of breach', () => {
  const day: Day = {
    ...squareDay(2, 2, 3),
    adults: [adultOf(0, 3, { mostInARow: 2 }), adultOf(1, 3)],
    lunch: { slots: [1], places: 10, place: 'p0' },
  };
  const station = (index: number) => ({ kind: 'station', station: index }) as const;
  const free = { kind: 'free' } as const;
  const good: DayPlan = {
    groups: [
      [station(0), station(1), free],
      [station(1), station(0), free],
    ],
    crew: [
      [0, 0, null],
      [1, 1, null],
    ],
  };
  expect(brokenRules(day, good)).toEqual([]);
  const breaks = (other: Partial<DayPlan>, at: Day = day): string =>
    brokenRules(at, { ...good, ...other }).join('; ');
  expect(breaks({ groups: [good.groups[0] ?? [], good.groups[0] ?? []] })).toMatch(/s0: groups in 0/);
  expect(breaks({ groups: [[station(0), free, free], good.groups[1] ?? []] })).toMatch(/g0 misses s1/);
  expect(breaks({ groups: [[station(0), station(1), station(0)], good.groups[1] ?? []] })).toMatch(/twice/);
  expect(breaks({ groups: [[station(0), station(1), { kind: 'lunch' }], good.groups[1] ?? []] })).toMatch(
    /g0: 1 lunches; g0: lunch at a wrong time/,
  );
  expect(
    breaks({
      crew: [
        [0, 0, 0],
        [1, 1, null],
      ],
    }),
  ).toMatch(/a0: no break/);
  expect(
    breaks({
      crew: [
        [0, null, null],
        [1, 1, null],
      ],
    }),
  ).toMatch(/s0: adults in 1/);
  const [first, second] = day.stations;
  if (first === undefined || second === undefined) throw new Error('two stations');
  const with0 = (more: Partial<typeof first>): Day => ({ ...day, stations: [{ ...first, ...more }, second] });
  expect(breaks({}, with0({ shutSlots: [1] }))).toMatch(/s0 is shut in 1/);
  expect(breaks({}, with0({ pupilsAtOnce: 9 }))).toMatch(/s0 full/);
  expect(breaks({}, with0({ skill: 'flint' }))).toMatch(/s0: skill in 0/);
  expect(breaks({}, with0({ fromYears: 9 }))).toMatch(/too young/);
  expect(
    breaks(
      {},
      {
        ...day,
        walkMinutes: [
          [0, 6],
          [6, 0],
        ],
      },
    ),
  ).toMatch(/cannot walk/);
});

describe('on tiny days the plan is as good as the best of all plans, tried one by one', () => {
  test.each(Array.from({ length: 100 }, (_, index) => index))('day %i', (index) => {
    const day = randomDay(`tiny-${index}`, { groups: 3, stations: 3, slots: 4 });
    const best = searchDay(day);
    const outcome = planDay(day, solve);
    if (best === null) return expect(outcome.status).toBe('impossible');
    expect(planned(outcome).minutes).toEqual(best);
  });

  test.each(Array.from({ length: 40 }, (_, index) => index))('day %i, where no route is found', (index) => {
    // The day is then solved in one piece, and comes to the same.
    const day = randomDay(`tiny-${index}`, { groups: 3, stations: 3, slots: 4 });
    const best = searchDay(day);
    const outcome = planDay(day, (text, watch) =>
      /\ba_0_/.test(text) ? { status: 'stopped', bound: null, values: null } : solve(text, watch),
    );
    if (best === null) return expect(outcome.status).toBe('impossible');
    expect(planned(outcome).minutes).toEqual(best);
  });
});

describe('twelve groups at eight stations in eight slots, within ten seconds', () => {
  test.each(dayCases)('$name: shown to be the best', async ({ day }) => {
    const outcome = planned(planDay(day, await highsSolver(10)));
    expect(outcome.bound).toEqual(outcome.minutes);
    expect(brokenRules(day, outcome.plan)).toEqual([]);
  });
});

test('a plan is told as it gets better: each keeps every rule, and none comes below its bound', () => {
  for (let index = 0; index < 30; index += 1) {
    const day = randomDay(`some-${index}`, { groups: 5, stations: 5, slots: 6 });
    if (countDay(day).length > 0) continue;
    planDay(day, solve, {
      tell: ({ plan, minutes, bound }) => {
        if (plan === null || minutes === null) return;
        expect(brokenRules(day, plan)).toEqual([]);
        expect(minutes.idleMinutes).toBeGreaterThanOrEqual(bound.idleMinutes);
      },
    });
  }
});

describe('on 300 days at random', () => {
  const days = Array.from({ length: 300 }, (_, index) =>
    randomDay(`some-${index}`, { groups: 5, stations: 5, slots: 6 }),
  );
  const outcomes = days.map((day) => ({ day, outcome: planDay(day, solve) }));

  test('there are many of both kinds, and none is left open', () => {
    const statuses = outcomes.map(({ outcome }) => outcome.status);
    const count = (status: string): number => statuses.filter((each) => each === status).length;
    expect(count('optimal')).toBeGreaterThan(80);
    expect(count('impossible')).toBeGreaterThan(80);
    expect(count('optimal') + count('impossible')).toBe(300);
  });

  test('each plan keeps every rule', () => {
    for (const { day, outcome } of outcomes)
      if ('plan' in outcome)
        expect({ day: day.title, broken: brokenRules(day, outcome.plan) }).toEqual({
          day: day.title,
          broken: [],
        });
  });

  test('each conflict cannot hold, and without any one of its rules it can', () => {
    for (const { day, outcome } of outcomes) {
      if (outcome.status !== 'impossible') continue;
      const { conflict } = outcome;
      expect(conflict?.isLeast).toBe(true);
      const rules = conflict?.rules ?? [];
      const holds = (some: typeof rules): boolean =>
        solve(dayProgramme(day, 'any', some)).status === 'optimal';
      expect({ day: day.title, holds: holds(rules) }).toEqual({ day: day.title, holds: false });
      for (const rule of rules)
        expect({ day: day.title, rule, holds: holds(rules.filter((other) => other !== rule)) }).toEqual({
          day: day.title,
          rule,
          holds: true,
        });
    }
  });
});

test('rules that can all hold have no conflict', () => {
  const day = squareDay(3, 3, 3);
  expect(conflictSet(day, rulesOf(day), solve)).toBeNull();
});

test('a solver that stops is no proof: neither a plan nor a conflict is made up', () => {
  const stopped = () => ({ status: 'stopped', bound: null, values: null }) as const;
  expect(planDay(squareDay(3, 3, 3), stopped).status).toBe('unknown');
  const outcome = planDay(squareDay(4, 3, 3), stopped);
  expect(outcome).toMatchObject({ status: 'impossible', conflict: null, leastMissed: null });
});

test('a plan whose walking is not proved is told as bounded', () => {
  const day = squareDay(2, 2, 2);
  const outcome = planDay(day, (text) => {
    const solved = solve(text);
    return /\b[fa]_0_/.test(text) ? { ...solved, status: 'stopped', bound: 0.4 } : solved;
  });
  expect(outcome).toMatchObject({
    status: 'bounded',
    minutes: { walkingMinutes: 2 },
    bound: { walkingMinutes: 1 },
  });
});

test('what must be given up is counted', () => {
  const day = { ...squareDay(1, 3, 2), groups: [groupOf(0, ['s0', 's1', 's2'])] };
  expect(planDay(day, solve)).toMatchObject({ status: 'impossible', leastMissed: 1 });
});
