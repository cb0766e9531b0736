import load, { type InitOptions } from 'highs';
import { handRotation, planDay, tellConflict } from '../../shared/day/index.ts';
import { fetchSolver } from '../solver/fetch-solver.ts';
import { solverOf } from '../solver/solver-of.ts';
import type { PlannerAsk, PlannerTold } from './day-messages.ts';

const tell = (told: PlannerTold): void => self.postMessage(told);

/** The rotation by hand is small; it may take this long and no longer. */
const ROTATION_SECONDS = 3;

/** The loader of HiGHS 1.15 is given bytes in vain; what it does ask, as every Emscripten loader, stands in no type. */
interface LoaderOptions extends InitOptions {
  readonly instantiateWasm: (
    imports: WebAssembly.Imports,
    done: (made: WebAssembly.Instance) => void,
  ) => void;
}

async function plan({ day, seconds, inHand, solverAt }: PlannerAsk): Promise<void> {
  const program = await WebAssembly.compile(await fetchSolver(solverAt));
  const options: LoaderOptions = {
    instantiateWasm: (imports, done) => {
      void WebAssembly.instantiate(program, imports).then(done);
    },
  };
  const highs = await load(options);
  const outcome = planDay(day, solverOf(highs, seconds), {
    inHand: inHand ?? undefined,
    tell: (progress) => tell({ kind: 'progress', ...progress }),
  });
  if (outcome.status === 'unknown') return tell({ kind: 'unknown' });
  if (outcome.status === 'impossible') return tell({ kind: 'impossible', ...tellConflict(day, outcome) });
  tell({ kind: 'plan', ...outcome });
  if (inHand === null)
    tell({ kind: 'rotation', rotation: handRotation(day, solverOf(highs, ROTATION_SECONDS)) });
}

// Plans a day beside the page, which answers meanwhile. To stop it the page ends the worker and keeps the last it told.
self.addEventListener('message', ({ data }: MessageEvent<PlannerAsk>) => {
  plan(data).catch((error: unknown) => tell({ kind: 'failed', message: String(error) }));
});
