import { basename } from 'node:path';
import { compileLesson, lessonSituation, type Comers } from '../../shared/compile/index.ts';
import { readSituation } from '../../shared/library/index.ts';
import type { SafetyRules, Situation } from '../../shared/safety/index.ts';
import type { Io } from './io.ts';
import { libraryFor } from './library-for.ts';
import { showProblem } from './show-problem.ts';

/** A situation with the rules it is to be judged by. */
export interface Judged {
  readonly situation: Situation;
  readonly rules: SafetyRules;
}

/** The situation a lesson makes with who comes to it; null where the lesson does not compile, which is then said. */
export async function fromLesson(
  file: string,
  comersFor: (rules: SafetyRules) => Comers | null,
  content: string | undefined,
  io: Io,
): Promise<Judged | 'refused' | 'unclear'> {
  const text = await io.read(file);
  const { library } = await libraryFor(file, content, io);
  const comers = comersFor(library.safety);
  if (comers === null) return 'unclear';
  const { plan, problems } = compileLesson(file, text, library, basename(file, '.md'));
  for (const problem of problems) io.complain(showProblem(problem, text));
  if (plan === null) return 'refused';
  return { situation: lessonSituation(plan, comers), rules: library.safety };
}

/** A situation written out in a file; null where it cannot be read, which is then said. */
export async function fromSituation(
  file: string,
  content: string | undefined,
  io: Io,
): Promise<Judged | 'refused'> {
  const text = await io.read(file);
  const { library } = await libraryFor(file, content, io);
  const read = readSituation(file, text, library.safety);
  for (const problem of read.problems) io.complain(showProblem(problem, text));
  return read.value === null ? 'refused' : { situation: read.value, rules: library.safety };
}
