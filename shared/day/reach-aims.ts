import { dayProgramme, type Settled } from './day-programme.ts';
import type { Day } from './day.ts';
import { movedCells, type InHand } from './in-hand.ts';
import { leastIdle } from './least-idle.ts';
import { minutesOf, type AimMinutes } from './measure-plan.ts';
import type { DayPlan } from './plan.ts';
import { readPlan } from './read-plan.ts';
import { solveByRoutes } from './solve-by-routes.ts';
import type { Solve, Solved, Watch } from './solver.ts';

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

/** What a plan may start from and whom it may tell. */
export interface PlanWishes {
  readonly inHand?: InHand | undefined;
  readonly tell?: ((progress: Progress) => void) | undefined;
}

/** The best plan that was found for all aims in their order, or that there is none. */
export type Reached =
  | {
      readonly status: 'optimal' | 'bounded';
      readonly plan: DayPlan;
      readonly bound: AimMinutes;
      readonly settled: Settled;
    }
  | { readonly status: 'infeasible' | 'unknown' };

const KEYS = {
  idle: 'idleMinutes',
  uneven: 'unevenMinutes',
  walking: 'walkingMinutes',
} as const satisfies Partial<Record<PlanAim, keyof AimMinutes>>;
type MinuteAim = keyof typeof KEYS;

/** Where routes are not asked: nothing found, nothing proved. */
const NOTHING: Solved = { status: 'stopped', bound: null, values: null };
const NO_BOUND: AimMinutes = { idleMinutes: 0, unevenMinutes: 0, walkingMinutes: 0 };

/** Minutes are whole: a bound of 39.2 rules out 39. */
const whole = (bound: number | null): number => Math.max(0, Math.ceil((bound ?? 0) - 1e-6));

/** Reaches for one aim after another; what is reached holds for those that follow. */
export function reachAims(day: Day, solve: Solve, { inHand, tell }: PlanWishes): Reached {
  let plan: DayPlan | null = null;
  let start: Watch = {};
  let settled: Settled = inHand === undefined ? {} : { inHand };
  let bound = NO_BOUND;
  let isProved = true;
  const told = (aim: PlanAim): void =>
    tell?.({ aim, plan, minutes: plan === null ? null : minutesOf(day, plan), bound });
  const take = (values: Solved['values']): void => {
    if (values === null) return;
    plan = readPlan(day, values);
    start = { start: values };
  };
  const better = (aim: PlanAim) => (values: NonNullable<Solved['values']>) => {
    take(values);
    told(aim);
  };
  const watch = (aim: MinuteAim): Watch => ({
    better: better(aim),
    bound: (proved) => {
      if (whole(proved) <= bound[KEYS[aim]]) return;
      bound = { ...bound, [KEYS[aim]]: whole(proved) };
      told(aim);
    },
  });
  /** The plan as it is now; a function, so that the compiler does not take it for the null it began as. */
  const planNow = (): DayPlan | null => plan;
  const settle = (aim: MinuteAim, proved: number): void => {
    const now = planNow();
    if (now === null) return;
    const reached = minutesOf(day, now)[KEYS[aim]];
    bound = { ...bound, [KEYS[aim]]: Math.min(reached, proved) };
    isProved &&= proved >= reached;
    settled = { ...settled, [KEYS[aim]]: reached };
    if (aim === 'idle') settled = { ...settled, leastIdleMinutes: bound.idleMinutes };
  };

  /** Where every group can have as little nothing on as counting allows, all three aims are one question. */
  const atOnce = (): boolean => {
    told('walking');
    const solved = solveByRoutes(day, 'walking', { idleEach: leastIdle(day) }, solve, {
      better: better('walking'),
    });
    take(solved.values);
    const now = planNow();
    if (now === null) return false;
    const { idleMinutes, unevenMinutes } = minutesOf(day, now);
    settle('idle', idleMinutes);
    settle('uneven', unevenMinutes);
    return reachWalking(solved) !== 'infeasible';
  };
  /** With the bound by routes known, the day in one piece, from the best plan so far. */
  const inOnePiece = (aim: MinuteAim, routed: Solved): Solved => {
    const least = aim === 'walking' ? { leastWalking: whole(routed.bound) } : {};
    const known = planNow() === null ? {} : start;
    const solved = solve(dayProgramme(day, aim, undefined, { ...settled, ...least }), {
      ...watch(aim),
      ...known,
    });
    take(solved.values);
    return { ...solved, bound: Math.max(routed.bound ?? 0, solved.bound ?? 0) };
  };
  const reachWalking = (routed: Solved): Solved['status'] => {
    const solved = routed.status === 'optimal' ? routed : inOnePiece('walking', routed);
    settle('walking', whole(solved.bound));
    return solved.status;
  };
  const result = (): Reached => {
    const now = planNow();
    return now === null
      ? { status: 'unknown' }
      : { status: isProved ? 'optimal' : 'bounded', plan: now, bound, settled };
  };

  if (inHand === undefined && atOnce()) return result();
  if (inHand !== undefined) {
    const solved = solve(dayProgramme(day, 'moved', undefined, settled), { better: better('moved') });
    if (solved.status === 'infeasible') return { status: 'infeasible' };
    take(solved.values);
    const now = planNow();
    if (now === null) return { status: 'unknown' };
    settled = { ...settled, movedCells: movedCells(now, inHand) };
    isProved &&= solved.status === 'optimal';
  }
  for (const aim of ['idle', 'uneven', 'walking'] as const) {
    told(aim);
    const routed = inHand === undefined ? solveByRoutes(day, aim, settled, solve, watch(aim)) : NOTHING;
    take(routed.values);
    const solved =
      routed.status === 'optimal' || routed.status === 'infeasible' ? routed : inOnePiece(aim, routed);
    if (planNow() === null) return { status: solved.status === 'infeasible' ? 'infeasible' : 'unknown' };
    settle(aim, whole(solved.bound));
  }
  return result();
}
