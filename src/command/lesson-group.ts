import { compileLesson } from '../../shared/compile/index.ts';
import { hasErrors } from '../../shared/lesson/index.ts';
import type { Plan } from '../../shared/compile/index.ts';
import type { SafetyRules } from '../../shared/safety/index.ts';
import type { Io } from './io.ts';
import { libraryFor } from './library-for.ts';
import { showProblem } from './show-problem.ts';

/** A lesson's plan with the rules beside it; null, with its problems told, where it does not compile. */
export async function readPlan(
  file: string,
  named: string | undefined,
  io: Io,
): Promise<{ readonly plan: Plan; readonly rules: SafetyRules } | null> {
  const text = await io.read(file);
  const { library } = await libraryFor(file, named, io);
  const { plan, problems } = compileLesson(file, text, library, 'safety');
  if (plan === null || hasErrors(problems)) {
    for (const problem of problems) io.complain(showProblem(problem, text));
    return null;
  }
  return { plan, rules: library.safety };
}
