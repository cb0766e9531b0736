import { useEffect, useRef, useState } from 'preact/hooks';
import type { PlannerAsk, PlannerTold } from '../workers/day-messages.ts';

type Told<Kind extends PlannerTold['kind']> = Extract<PlannerTold, { readonly kind: Kind }>;

/** How far the planner is: at rest, at work, or without a plan and why. */
export type Planning =
  | { readonly kind: 'rest' }
  | { readonly kind: 'work'; readonly seconds: number; readonly progress: Told<'progress'> | null }
  | Told<'impossible'>
  | Told<'unknown'>
  | Told<'failed'>;

/** What becomes of a plan: made to the end, or stopped with the best so far. */
export interface PlannerEars {
  readonly made: (plan: Told<'plan'> | (Told<'progress'> & { readonly status: 'stopped' })) => void;
  readonly rotation: (rotation: Told<'rotation'>['rotation']) => void;
}

export interface DayPlanner {
  readonly planning: Planning;
  readonly begin: (ask: PlannerAsk, ears: PlannerEars) => void;
  readonly stop: () => void;
  readonly forget: () => void;
}

/** Plans in a worker. To stop it the worker is ended, and the last plan it told is kept: each keeps every rule. */
export function useDayPlanner(): DayPlanner {
  const [planning, setPlanning] = useState<Planning>({ kind: 'rest' });
  const worker = useRef<Worker | null>(null);
  const last = useRef<Told<'progress'> | null>(null);
  const listening = useRef<PlannerEars | null>(null);
  const ticks = useRef<ReturnType<typeof setInterval> | undefined>(undefined);

  const end = (): void => {
    worker.current?.terminate();
    worker.current = null;
    clearInterval(ticks.current);
  };
  useEffect(() => end, []);

  const begin = (ask: PlannerAsk, ears: PlannerEars): void => {
    end();
    last.current = null;
    listening.current = ears;
    setPlanning({ kind: 'work', seconds: 0, progress: null });
    ticks.current = setInterval(
      () => setPlanning((now) => (now.kind === 'work' ? { ...now, seconds: now.seconds + 1 } : now)),
      1000,
    );
    const made = new Worker(new URL('../workers/day-planner.ts', import.meta.url), { type: 'module' });
    worker.current = made;
    made.addEventListener('message', ({ data }: MessageEvent<PlannerTold>) => {
      if (worker.current !== made) return;
      if (data.kind === 'progress') {
        if (data.plan !== null) last.current = data;
        setPlanning((now) => (now.kind === 'work' ? { ...now, progress: data } : now));
        return;
      }
      if (data.kind === 'rotation') return ears.rotation(data.rotation);
      clearInterval(ticks.current);
      if (data.kind !== 'plan') return setPlanning(data);
      setPlanning({ kind: 'rest' });
      ears.made(data);
    });
    made.addEventListener('error', ({ message }) => {
      end();
      setPlanning({ kind: 'failed', message });
    });
    made.postMessage(ask);
  };
  const stop = (): void => {
    end();
    setPlanning(last.current === null ? { kind: 'unknown' } : { kind: 'rest' });
    if (last.current !== null) listening.current?.made({ ...last.current, status: 'stopped' });
  };
  const forget = (): void => {
    end();
    setPlanning({ kind: 'rest' });
  };
  return { planning, begin, stop, forget };
}
