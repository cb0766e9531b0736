import { readFileSync } from 'node:fs';

/** One task of a thread, in ms of processor: on a machine that does other work, the clock would count theirs too. */
export interface Task {
  readonly thread: 'page' | 'worker';
  readonly processorMs: number;
}

interface TraceEvent {
  readonly name: string;
  readonly pid: number;
  readonly tid: number;
  /** Microseconds of processor; missing from events that are no tasks. */
  readonly tdur?: number;
  readonly args: { readonly name?: string };
}

const THREADS: Readonly<Record<string, Task['thread']>> = {
  CrRendererMain: 'page',
  'DedicatedWorker thread': 'worker',
};

/** What a trace must hold for `tasksOf`. */
export const TRACED = ['toplevel', 'disabled-by-default-devtools.timeline'];

/**
 * The tasks of the page's own thread and of its workers, from a trace of Chromium.
 *
 * @throws Error where the trace has no tasks with a time: nothing has been measured.
 */
export function tasksOf(file: string): readonly Task[] {
  // The format is Chromium's own: an object with a list of events.
  const { traceEvents } = JSON.parse(readFileSync(file, 'utf8')) as { readonly traceEvents: TraceEvent[] };
  const key = ({ pid, tid }: TraceEvent): string => `${pid} ${tid}`;
  const threads = new Map(
    traceEvents
      .filter(({ name }) => name === 'thread_name')
      .map((event) => [key(event), THREADS[event.args.name ?? '']]),
  );
  const tasks = traceEvents.flatMap((event): readonly Task[] => {
    const thread = threads.get(key(event));
    return event.name.endsWith('RunTask') && event.tdur !== undefined && thread !== undefined
      ? [{ thread, processorMs: event.tdur / 1000 }]
      : [];
  });
  for (const thread of ['page', 'worker'] as const)
    if (!tasks.some((task) => task.thread === thread)) throw new Error(`${file}: no task of the ${thread}`);
  return tasks;
}
