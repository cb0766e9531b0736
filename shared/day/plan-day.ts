import { conflictSet, type ConflictSet } from './conflict-set.ts';
import { countDay, type TooMany } from './count-day.ts';
import type { Day } from './day.ts';
import { dayProgramme } from './day-programme.ts';
import { movedCells, type InHand } from './in-hand.ts';
import { minutesOf, type AimMinutes } from './measure-plan.ts';
import type { DayPlan } from './plan.ts';
import { reachAims, type PlanWishes } from './reach-aims.ts';
import { readPlan } from './read-plan.ts';
import { rulesOf } from './rules.ts';
import type { Solve } from './solver.ts';

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

/**
 * Plans a day: every must-see and every rule kept, then in strict order the least time with nothing on, the least
 * difference between groups, the least walking; then adults change stations as little as is found. With a plan in hand,
 * what has happened stays, and before all these as few slots as can be are moved. The solver is handed in.
 */
export function planDay(day: Day, solve: Solve, wishes: PlanWishes = {}): DayOutcome {
  const { inHand, tell } = wishes;
  if (countDay(day).length > 0) return explain(day, solve, inHand);
  const reached = reachAims(day, solve, wishes);
  if (!('plan' in reached))
    return reached.status === 'infeasible' ? explain(day, solve, inHand) : { status: 'unknown' };
  const { status, bound, settled } = reached;
  let { plan } = reached;
  if (day.adults.length > 0) {
    tell?.({ aim: 'changes', plan, minutes: minutesOf(day, plan), bound });
    const { values } = solve(dayProgramme(day, 'changes', rulesOf(day), { ...settled, groups: plan.groups }));
    if (values !== null) plan = readPlan(day, values);
  }
  return {
    status,
    plan,
    minutes: minutesOf(day, plan),
    bound,
    movedCells: inHand === undefined ? null : movedCells(plan, inHand),
  };
}
