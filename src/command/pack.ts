import { basename } from 'node:path';
import { parseArgs } from 'node:util';
import { compileLesson } from '../../shared/compile/index.ts';
import { hasErrors } from '../../shared/lesson/index.ts';
import { packWords } from '../../shared/words/en/pack.ts';
import { makePack } from '../packs/make-pack.ts';
import { MOST_KILOBYTES } from '../packs/pack-size.ts';
import type { ExitCode, Io } from './io.ts';
import { libraryFor } from './library-for.ts';
import { showProblem } from './show-problem.ts';

/** `pack FILE [--out PACK.html]`: a lesson as one file that opens from a disk; never over a file that is there. */
export async function pack(argv: readonly string[], io: Io): Promise<ExitCode> {
  const { values, positionals } = parseArgs({
    args: [...argv],
    allowPositionals: true,
    options: { out: { type: 'string' }, content: { type: 'string' } },
  });
  const [file] = positionals;
  if (file === undefined) {
    io.complain(packWords.needs());
    return 2;
  }
  const id = basename(file, '.md');
  const out = values.out ?? `${id}.html`;
  const text = await io.read(file);
  const { library } = await libraryFor(file, values.content, io);
  const { plan, problems } = compileLesson(file, text, library, id);
  for (const problem of problems) io.complain(showProblem(problem, text));
  if (plan === null || hasErrors(problems)) return 1;
  if (await io.exists(out)) {
    io.complain(packWords.exists(out));
    return 1;
  }
  const { html, kilobytes, hasFonts } = await makePack(id, plan, library, io.home);
  await io.save(out, html);
  if (kilobytes > MOST_KILOBYTES) io.complain(packWords.tooLarge(kilobytes, MOST_KILOBYTES));
  io.write(packWords.written(out, kilobytes, hasFonts));
  return 0;
}
