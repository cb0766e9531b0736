import { dayProgramme, type Settled } from './day-programme.ts';
import type { Day } from './day.ts';
import { routeProgramme, type RouteAim } from './route-programme.ts';
import { rulesOf } from './rules.ts';
import type { Solve, Solved, Watch } from './solver.ts';

const NOTHING: Solved = { status: 'stopped', bound: null, values: null };

/**
 * One aim in two steps: first by routes alone, where groups that are alike are counted and the stations of a place are one;
 * then each group is sent to the stations on its route. Where the second step holds, the first has proved that no plan does
 * better (`optimal`). Where it does not, the bound stands all the same (`stopped`), and the day is to be solved in one piece.
 * `infeasible` by routes is infeasible in all.
 */
export function solveByRoutes(day: Day, aim: RouteAim, settled: Settled, solve: Solve, watch: Watch): Solved {
  const routes = routeProgramme(day, aim, settled);
  if (routes === null) return NOTHING;
  const { bound: tellBound } = watch;
  const solved = solve(routes.text, tellBound === undefined ? {} : { bound: tellBound });
  if (solved.status === 'infeasible' || solved.values === null) return solved;
  const { unevenMinutes: _, ...held } = settled;
  const sent = solve(
    dayProgramme(day, 'uneven', rulesOf(day), {
      ...(aim === 'idle' ? {} : held),
      routes: routes.read(solved.values),
    }),
  );
  if (sent.values === null) return { ...NOTHING, bound: solved.bound };
  watch.better?.(sent.values);
  return { status: solved.status, bound: solved.bound, values: sent.values };
}
