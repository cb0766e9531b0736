import { basename, dirname, join } from 'node:path';
import { parseArgs } from 'node:util';
import { checkDay, checkLesson } from '../../shared/compile/index.ts';
import { hasErrors, type Problem, type ProblemCode } from '../../shared/lesson/index.ts';
import { commandWords } from '../../shared/words/en/command.ts';
import {
  isDayFile,
  readFindsTable,
  readFramework,
  readGlossary,
  readNotes,
} from '../../shared/library/index.ts';
import { readFrameworkWords } from '../loaders/read-framework-words.ts';
import { readSiteFile } from '../loaders/read-site-file.ts';
import type { ExitCode, Io } from './io.ts';
import { contentFor, libraryFor } from './library-for.ts';
import { showProblem } from './show-problem.ts';

/** A framework file has a list of outcomes; a site has none. */
const isFramework = (text: string): boolean => /^outcomes:/m.test(text);

/** Problems of the library that would only show up in a lesson as a word nobody knows. */
const CONSEQUENCES: readonly ProblemCode[] = ['site-unknown', 'claim-unknown'];

/** Checks one file by what it is: a lesson, a site, a day, a framework, the glossary or the notes (`.yaml`), a finds table (`.csv`). */
async function checkFile(
  file: string,
  named: string | undefined,
  io: Io,
): Promise<{ problems: readonly Problem[]; text: string }> {
  const text = await io.read(file);
  const { library, problems } = await libraryFor(file, named, io);
  if (/\.ya?ml$/.test(file) && isDayFile(file, text))
    return { text, problems: checkDay(file, text, library.safety).problems };
  if (file.endsWith('.csv'))
    return { text, problems: readFindsTable(file, text, library.vocabulary, 'ASM').problems };
  const sources = library.sources.map(({ id }) => id);
  if (basename(file) === 'glossary.yaml')
    return { text, problems: readGlossary(file, text, sources).problems };
  if (basename(file) === 'notes.yaml') {
    const words = library.glossary.map(({ word }) => word);
    const { kinds } = await readFrameworkWords(dirname(file), join(io.home, 'content'));
    return { text, problems: readNotes(file, text, { kinds, words, sources }).problems };
  }
  if (file.endsWith('.yaml') || file.endsWith('.yml')) {
    if (isFramework(text)) {
      const folder = named ?? (await contentFor(file, io));
      const known = await readFrameworkWords(folder, join(io.home, 'content'));
      return { text, problems: readFramework(file, text, known).problems };
    }
    return { text, problems: (await readSiteFile(file, library.vocabulary)).problems };
  }
  const compiled = checkLesson(file, text, library, 'check');
  const isLost = compiled.problems.some(({ code }) => CONSEQUENCES.includes(code));
  return { text, problems: isLost ? [...problems, ...compiled.problems] : compiled.problems };
}

/** `check FILE… [--json]`: the problems of lesson, site, day and framework files and finds tables; 1 on any error. */
export async function check(argv: readonly string[], io: Io): Promise<ExitCode> {
  const { values, positionals } = parseArgs({
    args: [...argv],
    allowPositionals: true,
    options: { json: { type: 'boolean' }, content: { type: 'string' } },
  });
  if (positionals.length === 0) {
    io.complain(commandWords.needsFile('check'));
    return 2;
  }
  const all: Problem[] = [];
  for (const file of positionals) {
    const { problems, text } = await checkFile(file, values.content, io);
    all.push(...problems);
    if (values.json !== true)
      for (const problem of problems) io.write(showProblem(problem, problem.file === file ? text : null));
  }
  if (values.json === true) {
    const rows = all.map((problem) => ({
      file: problem.file,
      line: problem.from.line,
      column: problem.from.column,
      level: problem.grade,
      code: problem.code,
      message: commandWords.message(problem),
      mend: problem.mend,
    }));
    io.write(`${JSON.stringify(rows, null, 2)}\n`);
  } else io.write(commandWords.checked(positionals.length, all));
  return hasErrors(all) ? 1 : 0;
}
