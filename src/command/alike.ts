import { parseArgs } from 'node:util';
import { alikeReport, LIKENESSES, type Likeness } from '../../shared/assemblage/index.ts';
import { nearest } from '../../shared/lesson/index.ts';
import { readCounts } from '../../shared/library/index.ts';
import { compareWords } from '../../shared/words/en/table-problems.ts';
import type { ExitCode, Io } from './io.ts';
import { showProblem } from './show-problem.ts';

/** More shuffles than this only keep people waiting. ASM. */
const MOST_SHUFFLES = 1_000_000;

const isLikeness = (word: string): word is Likeness => LIKENESSES.some((likeness) => likeness === word);

/** `alike COUNTS.csv --by …`: how alike each pit is to each, and what chance alone would do; 1 where the table has errors. */
export async function alike(
  argv: readonly string[],
  io: Pick<Io, 'write' | 'complain' | 'read'>,
): Promise<ExitCode> {
  const { values, positionals } = parseArgs({
    args: [...argv],
    allowPositionals: true,
    options: { by: { type: 'string' }, shuffles: { type: 'string' }, seed: { type: 'string' } },
  });
  const [file] = positionals;
  const { by = 'brainerd-robinson', shuffles = null, seed = '1' } = values;
  if (file === undefined) {
    io.complain(compareWords.alikeNeeds());
    return 2;
  }
  if (!isLikeness(by)) {
    io.complain(compareWords.byUnknown(by, nearest(by, LIKENESSES), LIKENESSES));
    return 2;
  }
  if (shuffles !== null && (!/^\d{1,7}$/.test(shuffles) || Number(shuffles) > MOST_SHUFFLES)) {
    io.complain(compareWords.shufflesUnfit(shuffles, MOST_SHUFFLES));
    return 2;
  }
  const text = await io.read(file);
  const { counts, problems } = readCounts(file, text);
  for (const problem of problems) io.complain(showProblem(problem, text));
  if (counts === null) return 1;
  const report = alikeReport(counts, by, shuffles === null ? null : Number(shuffles), seed);
  io.write(`${JSON.stringify(report, null, 2)}\n`);
  return 0;
}
