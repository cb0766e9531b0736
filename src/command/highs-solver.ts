import load from 'highs';
import type { Solve, Solved } from '../../shared/day/index.ts';

/** Even with the time used up, a small programme gets this long. */
const LEAST_SECONDS = 0.2;

/** The solver HiGHS, in this process, no network: all it is asked together takes about `seconds`. */
export async function highsSolver(seconds: number): Promise<Solve> {
  const highs = await load();
  const { modelStatus } = highs.constants;
  const end = performance.now() + seconds * 1000;
  return (programme) =>
    highs.withModel({ format: 'lp', data: programme }, (model): Solved => {
      model.options.set({
        output_flag: false,
        time_limit: Math.max(LEAST_SECONDS, (end - performance.now()) / 1000),
        mip_rel_gap: 0,
        mip_abs_gap: 1e-6,
      });
      model.run();
      const status = model.getModelStatus();
      if (status === modelStatus.infeasible) return { status: 'infeasible', bound: null, values: null };
      const isOptimal = status === modelStatus.optimal;
      const hasPlan =
        isOptimal || model.info.get('primal_solution_status') === highs.constants.solutionStatus.feasible;
      const proved = Number(model.info.get('mip_dual_bound'));
      const { colValue } = model.getSolution();
      const names = Array.from(colValue, (value, index): [string, number] => [
        model.getColName(index),
        value,
      ]);
      return {
        status: isOptimal ? 'optimal' : 'stopped',
        bound: Number.isFinite(proved) && Math.abs(proved) < 1e20 ? proved : null,
        values: hasPlan ? Object.fromEntries(names) : null,
      };
    });
}
