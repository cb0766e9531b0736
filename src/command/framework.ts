import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { readCasePackage, writeCasePackage, writeFramework } from '../../shared/case/index.ts';
import { readFramework } from '../../shared/library/index.ts';
import { frameworkCommandWords } from '../../shared/words/en/case.ts';
import { readFrameworkWords } from '../loaders/read-framework-words.ts';
import type { ExitCode, Io } from './io.ts';
import { contentFor } from './library-for.ts';
import { showProblem } from './show-problem.ts';

/** Now, to the second, as CASE writes it. */
const now = (): string => new Date().toISOString().replace(/\.\d+Z$/, 'Z');

const DATE_TIME = /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(?:\.\d+)?(?:Z|[+-]\d\d:\d\d)$/;
const isDateTime = (written: string): boolean =>
  DATE_TIME.test(written) && !Number.isNaN(Date.parse(written));

/**
 * `framework FILE [--to-case | --from-case] [--changed DATETIME]`: a framework file as a CASE 1.1 package, or a package
 * as a framework file; by the ending of the file (`.json` is a package) where neither is said. Problems go to the other
 * stream, cautions too; 1 where there are errors, and then nothing is written.
 */
export async function framework(argv: readonly string[], io: Io): Promise<ExitCode> {
  const { values, positionals } = parseArgs({
    args: [...argv],
    allowPositionals: true,
    options: {
      'to-case': { type: 'boolean' },
      'from-case': { type: 'boolean' },
      changed: { type: 'string' },
      content: { type: 'string' },
    },
  });
  const [file, more] = positionals;
  const refuse = (words: string): ExitCode => {
    io.complain(words);
    return 2;
  };
  if (file === undefined || more !== undefined) return refuse(frameworkCommandWords.needs());
  const [toCase, fromCase] = [values['to-case'] === true, values['from-case'] === true];
  if (toCase && fromCase) return refuse(frameworkCommandWords.bothWays());
  const changed = values.changed ?? now();
  if (!isDateTime(changed)) return refuse(frameworkCommandWords.dateUnfit(changed));
  const text = await io.read(file);
  const folder = values.content ?? (await contentFor(file, io));
  const known = await readFrameworkWords(folder, join(io.home, 'content'));
  const isPackage = fromCase || (!toCase && file.toLowerCase().endsWith('.json'));
  const read = isPackage ? readCasePackage(file, text, known) : readFramework(file, text, known);
  for (const problem of read.problems) io.complain(showProblem(problem, text));
  if (read.value === null) return 1;
  io.write(
    isPackage
      ? writeFramework(read.value)
      : `${JSON.stringify(writeCasePackage(read.value, changed), null, 2)}\n`,
  );
  return 0;
}
