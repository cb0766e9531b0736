import { basename } from 'node:path';
import { parseArgs } from 'node:util';
import { bandPlan, compileLesson } from '../../shared/compile/index.ts';
import { hasErrors } from '../../shared/lesson/index.ts';
import { teacherNotes, writeMarkdown } from '../../shared/notes/index.ts';
import { notesCommand } from '../../shared/words/en/notes-command.ts';
import type { ExitCode, Io } from './io.ts';
import { libraryFor } from './library-for.ts';
import { showProblem } from './show-problem.ts';

/** `notes FILE [--band B] [--out X.md]`: the teacher notes as plain Markdown; never over a file that is there. */
export async function notes(argv: readonly string[], io: Io): Promise<ExitCode> {
  const { values, positionals } = parseArgs({
    args: [...argv],
    allowPositionals: true,
    options: { band: { type: 'string' }, out: { type: 'string' }, content: { type: 'string' } },
  });
  const [file] = positionals;
  if (file === undefined) {
    io.complain(notesCommand.needs());
    return 2;
  }
  const text = await io.read(file);
  const { library } = await libraryFor(file, values.content, io);
  const { plan, problems } = compileLesson(file, text, library, basename(file, '.md'));
  for (const problem of problems) io.complain(showProblem(problem, text));
  if (plan === null || hasErrors(problems)) return 1;
  const band = plan.bands.find((each) => each === values.band);
  if (values.band !== undefined && band === undefined) {
    io.complain(notesCommand.bandElsewhere(values.band, plan.bands));
    return 2;
  }
  const markdown = writeMarkdown(teacherNotes(band === undefined ? plan : bandPlan(plan, band), library));
  const { out } = values;
  if (out === undefined) {
    io.write(markdown);
    return 0;
  }
  if (await io.exists(out)) {
    io.complain(notesCommand.exists(out));
    return 1;
  }
  await io.save(out, markdown);
  io.write(notesCommand.written(out));
  return 0;
}
