import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { coverageOf } from '../../shared/curriculum/index.ts';
import { hasErrors, nearest } from '../../shared/lesson/index.ts';
import { claimReport } from '../../shared/words/en/claim-report.ts';
import { commandWords } from '../../shared/words/en/command.ts';
import { readLessons } from '../loaders/read-lessons.ts';
import type { ExitCode, Io } from './io.ts';
import { libraryFor } from './library-for.ts';
import { showProblem } from './show-problem.ts';

/**
 * `coverage DIR [--framework ID] [--json]`: which outcomes the lessons of a folder meet, which lesson meets each, and
 * which outcomes none does. Frameworks none of the lessons meet are told as gaps only with `--framework` or `--json`.
 */
export async function coverage(argv: readonly string[], io: Io): Promise<ExitCode> {
  const { values, positionals } = parseArgs({
    args: [...argv],
    allowPositionals: true,
    options: { json: { type: 'boolean' }, framework: { type: 'string' }, content: { type: 'string' } },
  });
  const [folder] = positionals;
  if (folder === undefined) {
    io.complain(commandWords.coverageNeeds());
    return 2;
  }
  const { library, problems } = await libraryFor(join(folder, 'any.md'), values.content, io);
  for (const problem of problems) io.complain(showProblem(problem, null));
  const known = library.curricula.frameworks.map(({ id }) => id);
  if (values.framework !== undefined && !known.includes(values.framework)) {
    io.complain(claimReport.frameworkUnknown(values.framework, nearest(values.framework, known), known));
    return 2;
  }
  const lessons = await readLessons(folder, library);
  const all = coverageOf(
    library.curricula,
    lessons.map(({ id, claims }) => ({ lesson: id, claims })),
  ).filter(({ framework }) => values.framework === undefined || framework === values.framework);
  if (values.json === true) {
    const rows = all.map(({ framework, name, covered, gaps }) => ({
      framework,
      name,
      outcomes: covered.map(({ outcome, lessons: met }) => ({
        outcome: outcome.id,
        stage: outcome.stage,
        summary: outcome.summary,
        status: outcome.status,
        lessons: met,
      })),
      gaps: gaps.map(({ id, stage, summary, status }) => ({ outcome: id, stage, summary, status })),
    }));
    io.write(`${JSON.stringify(rows, null, 2)}\n`);
  } else {
    if (lessons.length === 0) io.write(claimReport.noLessons(folder));
    for (const { name, covered, gaps } of all) {
      if (covered.length === 0 && values.framework === undefined) continue;
      io.write(claimReport.coverageHead(name, covered.length, covered.length + gaps.length));
      for (const { outcome, lessons: met } of covered) io.write(claimReport.coveredRow(outcome.id, met));
      io.write(claimReport.gaps(gaps.map(({ id }) => id)));
    }
  }
  return lessons.some(({ problems }) => hasErrors(problems)) ? 1 : 0;
}
