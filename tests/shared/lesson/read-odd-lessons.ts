import { stream } from '../../../shared/chance/index.ts';
import { checkLesson } from '../../../shared/compile/index.ts';
import { hasErrors, type Problem } from '../../../shared/lesson/index.ts';
import { demoLessons, demoLibrary } from '../../demo.ts';
import { oddLesson } from './odd-lessons.ts';

const SLOWEST_MS = 100;

const demo = demoLessons.map(({ text }) => text);

/** Milliseconds of work, not of waiting: other work on the machine does not count. */
function workMs(work: () => void): number {
  const before = process.threadCpuUsage();
  work();
  const { user, system } = process.threadCpuUsage(before);
  return (user + system) / 1000;
}

function placeFaults(problem: Problem, text: string): readonly string[] {
  const lines = text.split(/\r\n|\n|\r/);
  const { from, to, mend, edit } = problem;
  const line = lines[from.line - 1];
  return [
    ...(mend.trim() === '' ? ['no mend'] : []),
    ...(line === undefined ? [`line ${from.line} of ${lines.length}`] : []),
    ...(from.column < 1 || from.column > (line ?? '').length + 1
      ? [`column ${from.column} of "${line}"`]
      : []),
    ...(from.offset < 0 || to.offset > text.length || to.offset < from.offset
      ? ['offsets outside the file']
      : []),
    ...(edit !== undefined && (edit.from < 0 || edit.to > text.length || edit.to < edit.from)
      ? ['edit outside the file']
      : []),
  ];
}

/** Reads odd lessons by number; what is wrong with how they were read, in words, and how long the slowest took. */
export function readOddLessons(
  first: number,
  last: number,
): { readonly faults: readonly string[]; readonly slowestMs: number } {
  const faults: string[] = [];
  let slowestMs = 0;
  for (let number = first; number < last; number += 1) {
    const text = oddLesson(stream(`odd-lesson/${number}`), demo);
    const read = (): void => {
      const { plan, problems } = checkLesson('odd.md', text, demoLibrary, 'odd');
      if ((plan === null) !== hasErrors(problems)) faults.push(`${number}: a plan and errors, or neither`);
      for (const problem of problems) {
        faults.push(...placeFaults(problem, text).map((fault) => `${number}: ${problem.code}: ${fault}`));
      }
    };
    try {
      const ms = workMs(read);
      // The compiler of the machine, or its clean-up, may fall into one reading: a slow one is read again, twice.
      const settledMs = ms > SLOWEST_MS ? Math.min(ms, workMs(read), workMs(read)) : ms;
      slowestMs = Math.max(slowestMs, settledMs);
      if (settledMs > SLOWEST_MS)
        faults.push(`${number}: ${Math.round(settledMs)} ms for ${text.length} characters`);
    } catch (error) {
      faults.push(`${number}: ${error instanceof Error ? error.message : String(error)}`);
    }
  }
  return { faults, slowestMs };
}
