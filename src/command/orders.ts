import { parseArgs } from 'node:util';
import { readStepsFile } from '../../shared/library/index.ts';
import { ordersReport } from '../../shared/ordering/index.ts';
import { compareWords } from '../../shared/words/en/table-problems.ts';
import type { ExitCode, Io } from './io.ts';
import { showProblem } from './show-problem.ts';

/**
 * `orders STEPS.yaml`: how many orders of the steps are valid, or the cycle that leaves none; 1 where the file has errors. A
 * cycle is an answer (and a caution), not an error of the command.
 */
export async function orders(
  argv: readonly string[],
  io: Pick<Io, 'write' | 'complain' | 'read'>,
): Promise<ExitCode> {
  const { positionals } = parseArgs({ args: [...argv], allowPositionals: true, options: {} });
  const [file] = positionals;
  if (file === undefined) {
    io.complain(compareWords.ordersNeeds());
    return 2;
  }
  const text = await io.read(file);
  const read = readStepsFile(file, text);
  for (const problem of read.problems) io.complain(showProblem(problem, text));
  if (read.steps === null) return 1;
  io.write(`${JSON.stringify(ordersReport(read.steps, read), null, 2)}\n`);
  return 0;
}
