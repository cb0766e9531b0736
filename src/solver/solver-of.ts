import type { CallbackData, Highs, HighsCallbackMap, Model } from 'highs';
import type { Solve, Solved, Watch } from '../../shared/day/index.ts';

/** Even with the time used up, a small programme gets this long. */
const LEAST_SECONDS = 0.2;
/** What HiGHS calls no bound at all. */
const ENDLESS = 1e20;

const namesOf = (model: Model, count: number): readonly string[] =>
  Array.from({ length: count }, (_, index) => model.getColName(index));

/** Only what is listened for is asked for: each call out of the solver costs it time. */
function earsOf(
  { constants: { callbackType } }: Highs,
  watch: Watch,
  named: (values: Float64Array) => Readonly<Record<string, number>>,
): HighsCallbackMap {
  let best = Number.NEGATIVE_INFINITY;
  const { better, bound } = watch;
  return {
    ...(better === undefined
      ? {}
      : {
          [callbackType.mipImprovingSolution]: ({ data }: { readonly data: CallbackData }) => {
            if (data.mip_solution !== undefined) better(named(data.mip_solution));
            return undefined;
          },
        }),
    ...(bound === undefined
      ? {}
      : {
          [callbackType.mipInterrupt]: ({ data }: { readonly data: CallbackData }) => {
            const proved = data.mip_dual_bound ?? best;
            if (Math.abs(proved) < ENDLESS && proved > best + 1e-6) {
              best = proved;
              bound(proved);
            }
            return undefined;
          },
        }),
  };
}

/** HiGHS as the solver of a day: all it is asked together takes about `seconds`. */
export function solverOf(highs: Highs, seconds: number): Solve {
  const { modelStatus, solutionStatus } = highs.constants;
  const end = performance.now() + seconds * 1000;
  return (programme, watch = {}) =>
    highs.withModel({ format: 'lp', data: programme }, (model): Solved => {
      const left = Math.max(LEAST_SECONDS, (end - performance.now()) / 1000);
      model.options.set({
        output_flag: false,
        time_limit: Math.min(left, watch.seconds ?? left),
        mip_rel_gap: 0,
        mip_abs_gap: 1e-6,
      });
      const { numCols } = model.getDimensions();
      const names = namesOf(model, numCols);
      const named = (values: Float64Array): Readonly<Record<string, number>> =>
        Object.fromEntries(names.map((name, index) => [name, values[index] ?? 0]));
      const { start } = watch;
      if (start !== undefined) {
        const known = [...names.entries()].filter(([, name]) => start[name] !== undefined);
        model.setSolution({
          indices: known.map(([index]) => index),
          values: known.map(([, name]) => start[name] ?? 0),
        });
      }
      model.run(earsOf(highs, watch, named));
      const status = model.getModelStatus();
      if (status === modelStatus.infeasible) return { status: 'infeasible', bound: null, values: null };
      const isOptimal = status === modelStatus.optimal;
      const hasPlan = isOptimal || model.info.get('primal_solution_status') === solutionStatus.feasible;
      const proved = Number(model.info.get('mip_dual_bound'));
      return {
        status: isOptimal ? 'optimal' : 'stopped',
        bound: Number.isFinite(proved) && Math.abs(proved) < ENDLESS ? proved : null,
        values: hasPlan ? named(model.getSolution().colValue) : null,
      };
    });
}
