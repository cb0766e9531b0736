import { conflictSet, type ConflictSet } from './conflict-set.ts';
import { countDay, type TooMany } from './count-day.ts';
import type { Day } from './day.ts';
import { dayProgramme, type Settled } from './day-programme.ts';
import { movedCells, type InHand } from './in-hand.ts';
import { minutesOf, type AimMinutes } from './measure-plan.ts';
import type { DayPlan } from './plan.ts';
import { readPlan } from './read-plan.ts';
import { rulesOf } from './rules.ts';
import type { Solve, Watch } from './solver.ts';

/** The aims of a plan in their order; `moved` only where there is a plan in hand. */
export type PlanAim = 'moved' | 'idle' | 'uneven' | 'walking' | 'changes';

/** How far the planning is: told each time something is known that was not. */
export interface Progress {
  readonly aim: PlanAim;
  /** The best plan so far, which keeps every rule; null before there is one. */
  readonly plan: DayPlan | null;
  readonly minutes: AimMinutes | null;
  /** What no plan can come below; 0 where nothing is proved. */
  readonly bound: AimMinutes;
}

/** A plan, or why there is none. */
export type DayOutcome =
  | {
      /** `bounded`: the plan keeps every rule, and a better one is not ruled out; no plan comes below `bound`. */
      readonly status: 'optimal' | 'bounded';
      readonly plan: DayPlan;
      readonly minutes: AimMinutes;
      readonly bound: AimMinutes;
      /** Slots of groups that are not as they stood in the plan in hand; null where there was none. */
      readonly movedCells: number | null;
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

/** What a plan may start from and whom it may tell. */
export interface PlanWishes {
  readonly inHand?: InHand | undefined;
  readonly tell?: ((progress: Progress) => void) | undefined;
}

const KEYS = {
  idle: 'idleMinutes',
  uneven: 'unevenMinutes',
  walking: 'walkingMinutes',
} as const satisfies Partial<Record<PlanAim, keyof AimMinutes>>;

/** Why there is no plan: by counting, then the least set of rules that cannot all hold. */
function explain(day: Day, solve: Solve, inHand: InHand | undefined): DayOutcome {
  const reasons = countDay(day);
  // What counting has found is a small set to start from.
  const start = reasons[0]?.rules ?? rulesOf(day);
  const settled = inHand === undefined ? {} : { inHand };
  const missed = solve(dayProgramme(day, 'missed', rulesOf(day), settled));
  return {
    status: 'impossible',
    reasons,
    conflict: conflictSet(day, start, solve, inHand) ?? conflictSet(day, rulesOf(day), solve, inHand),
    leastMissed: missed.status === 'optimal' && missed.bound !== null ? Math.round(missed.bound) : null,
  };
}

/** Minutes are whole: a bound of 39.2 rules out 39. */
const whole = (bound: number | null): number => Math.max(0, Math.ceil((bound ?? 0) - 1e-6));

/**
 * Plans a day: every must-see and every rule kept, then in strict order the least time with nothing on, the least
 * difference between groups, the least walking; then adults change stations as little as is found. With a plan in hand,
 * what has happened stays, and before all these as few slots as can be are moved. The solver is handed in.
 */
export function planDay(day: Day, solve: Solve, { inHand, tell }: PlanWishes = {}): DayOutcome {
  if (countDay(day).length > 0) return explain(day, solve, inHand);
  const rules = rulesOf(day);
  let plan: DayPlan | null = null;
  let settled: Settled = inHand === undefined ? {} : { inHand };
  let isProved = true;
  let bound: AimMinutes = { idleMinutes: 0, unevenMinutes: 0, walkingMinutes: 0 };
  const watch = (aim: PlanAim): Watch => {
    const told = (): void => {
      tell?.({ aim, plan, minutes: plan === null ? null : minutesOf(day, plan), bound });
    };
    told();
    return {
      better: (values) => {
        plan = readPlan(day, values);
        told();
      },
      bound: (proved) => {
        if (aim === 'moved' || aim === 'changes') return;
        if (whole(proved) <= bound[KEYS[aim]]) return;
        bound = { ...bound, [KEYS[aim]]: whole(proved) };
        told();
      },
    };
  };
  const aims = [...(inHand === undefined ? [] : (['moved'] as const)), 'idle', 'uneven', 'walking'] as const;
  for (const aim of aims) {
    const solved = solve(dayProgramme(day, aim, rules, settled), watch(aim));
    if (plan === null && solved.status === 'infeasible') return explain(day, solve, inHand);
    if (solved.values !== null) plan = readPlan(day, solved.values);
    if (plan === null) return { status: 'unknown' };
    if (aim === 'moved') {
      if (inHand !== undefined) settled = { ...settled, movedCells: movedCells(plan, inHand) };
      isProved &&= solved.status === 'optimal';
      continue;
    }
    const reached = minutesOf(day, plan)[KEYS[aim]];
    bound = { ...bound, [KEYS[aim]]: Math.min(reached, whole(solved.bound)) };
    isProved &&= bound[KEYS[aim]] === reached;
    settled = { ...settled, [KEYS[aim]]: reached };
  }
  if (plan === null) return { status: 'unknown' };
  if (day.adults.length > 0) {
    const { values } = solve(
      dayProgramme(day, 'changes', rules, { ...settled, groups: plan.groups }),
      watch('changes'),
    );
    if (values !== null) plan = readPlan(day, values);
  }
  return {
    status: isProved ? 'optimal' : 'bounded',
    plan,
    minutes: minutesOf(day, plan),
    bound,
    movedCells: inHand === undefined ? null : movedCells(plan, inHand),
  };
}
