import load from 'highs';
import wasm from 'highs/runtime?url';
import { handRotation, planDay, tellConflict } from '../../shared/day/index.ts';
import { solverOf } from '../solver/solver-of.ts';
import type { PlannerAsk, PlannerTold } from './day-messages.ts';

const tell = (told: PlannerTold): void => self.postMessage(told);

/** The rotation by hand is small; it may take this long and no longer. */
const ROTATION_SECONDS = 3;

async function plan({ day, seconds, inHand }: PlannerAsk): Promise<void> {
  const highs = await load({ locateFile: () => wasm });
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
