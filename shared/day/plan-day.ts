import { conflictSet, type ConflictSet } from './conflict-set.ts';
import { countDay, type TooMany } from './count-day.ts';
import type { Day } from './day.ts';
import { dayProgramme, type Aim, type Settled } from './day-programme.ts';
import { measurePlan, unevenMinutes } from './measure-plan.ts';
import type { DayPlan } from './plan.ts';
import { readPlan } from './read-plan.ts';
import { rulesOf } from './rules.ts';
import type { Solve } from './solver.ts';

/** Minutes of the three aims, in their order. */
export interface AimMinutes {
  /** Of all groups together. */
  readonly idleMinutes: number;
  /** Between the group that waits most and the one that waits least. */
  readonly unevenMinutes: number;
  /** Of all groups together. */
  readonly walkingMinutes: number;
}

/** A plan, or why there is none. */
export type DayOutcome =
  | {
      /** `bounded`: the plan keeps every rule, and a better one is not ruled out; no plan comes below `bound`. */
      readonly status: 'optimal' | 'bounded';
      readonly plan: DayPlan;
      readonly minutes: AimMinutes;
      readonly bound: AimMinutes;
    }
  | {
      readonly status: 'impossible';
      readonly reasons: readonly TooMany[];
      readonly conflict: ConflictSet | null;
      /** The fewest must-sees that have to be given up; null where other rules stand in the way, or it is not known. */
      readonly leastMissed: number | null;
    }
  /** Out of time before there was a plan, or a proof that there is none. */
  | { readonly status: 'unknown' };

const ORDER = ['idle', 'uneven', 'walking'] as const satisfies readonly Aim[];

function minutesOf(day: Day, plan: DayPlan): AimMinutes {
  const groups = measurePlan(day, plan);
  const total = (key: 'idleMinutes' | 'walkingMinutes'): number =>
    groups.reduce((minutes, group) => minutes + group[key], 0);
  return {
    idleMinutes: total('idleMinutes'),
    unevenMinutes: unevenMinutes(groups),
    walkingMinutes: total('walkingMinutes'),
  };
}

const KEYS = {
  idle: 'idleMinutes',
  uneven: 'unevenMinutes',
  walking: 'walkingMinutes',
} as const satisfies Record<(typeof ORDER)[number], keyof AimMinutes>;

/** Why there is no plan: by counting, then the least set of rules that cannot all hold. */
function explain(day: Day, solve: Solve): DayOutcome {
  const reasons = countDay(day);
  // What counting has found is a small set to start from.
  const start = reasons[0]?.rules ?? rulesOf(day);
  const missed = solve(dayProgramme(day, 'missed'));
  return {
    status: 'impossible',
    reasons,
    conflict: conflictSet(day, start, solve) ?? conflictSet(day, rulesOf(day), solve),
    leastMissed: missed.status === 'optimal' && missed.bound !== null ? Math.round(missed.bound) : null,
  };
}

/**
 * Plans a day: every must-see and every rule kept, then in strict order the least time with nothing on, the least
 * difference between groups, the least walking; then adults change stations as little as is found. The solver is handed in.
 */
export function planDay(day: Day, solve: Solve): DayOutcome {
  if (countDay(day).length > 0) return explain(day, solve);
  let plan: DayPlan | null = null;
  let settled: Settled = {};
  let isProved = true;
  const bound = { idleMinutes: 0, unevenMinutes: 0, walkingMinutes: 0 };
  for (const aim of ORDER) {
    const solved = solve(dayProgramme(day, aim, rulesOf(day), settled));
    if (plan === null && solved.status === 'infeasible') return explain(day, solve);
    if (solved.values !== null) plan = readPlan(day, solved.values);
    if (plan === null) return { status: 'unknown' };
    const reached = minutesOf(day, plan);
    // Minutes are whole: a bound of 39.2 rules out 39.
    const proved = Math.max(0, Math.ceil((solved.bound ?? 0) - 1e-6));
    bound[KEYS[aim]] = Math.min(reached[KEYS[aim]], proved);
    isProved &&= bound[KEYS[aim]] === reached[KEYS[aim]];
    settled = { ...settled, [KEYS[aim]]: reached[KEYS[aim]] };
  }
  if (plan !== null && day.adults.length > 0) {
    const { values } = solve(dayProgramme(day, 'changes', rulesOf(day), { groups: plan.groups }));
    if (values !== null) plan = readPlan(day, values);
  }
  return plan === null
    ? { status: 'unknown' }
    : { status: isProved ? 'optimal' : 'bounded', plan, minutes: minutesOf(day, plan), bound };
}
