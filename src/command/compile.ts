import { parseArgs } from 'node:util';
import { basename } from 'node:path';
import { compileLesson } from '../../shared/compile/index.ts';
import { commandWords } from '../../shared/words/en/command.ts';
import type { ExitCode, Io } from './io.ts';
import { libraryFor } from './library-for.ts';
import { showProblem } from './show-problem.ts';

/** `compile FILE [--seed N]`: the plan as JSON; problems go to the other stream. */
export async function compile(argv: readonly string[], io: Io): Promise<ExitCode> {
  const { values, positionals } = parseArgs({
    args: [...argv],
    allowPositionals: true,
    options: { seed: { type: 'string' }, content: { type: 'string' } },
  });
  const [file] = positionals;
  if (file === undefined) {
    io.complain(commandWords.needsFile('compile'));
    return 2;
  }
  const text = await io.read(file);
  const { library } = await libraryFor(file, values.content, io);
  const { plan, problems } = compileLesson(file, text, library, values.seed ?? basename(file, '.md'));
  for (const problem of problems) io.complain(showProblem(problem, text));
  if (plan === null) return 1;
  io.write(`${JSON.stringify(plan, null, 2)}\n`);
  return 0;
}
