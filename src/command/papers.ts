import { basename, join, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { compileLesson } from '../../shared/compile/index.ts';
import { hasErrors } from '../../shared/lesson/index.ts';
import { papersCommandWords } from '../../shared/words/en/papers-command.ts';
import { readLibrary } from '../loaders/read-library.ts';
import { lookUpChromium } from '../papers/find-chromium.ts';
import { makePapers, paperPathsOf } from '../papers/make-papers.ts';
import { PAPER_SIZES, type PaperSize } from '../papers/print-page.ts';
import type { ExitCode, Io } from './io.ts';
import { contentFor } from './library-for.ts';
import { showProblem } from './show-problem.ts';

const options = {
  out: { type: 'string' },
  size: { type: 'string' },
  large: { type: 'boolean' },
  backs: { type: 'boolean' },
  content: { type: 'string' },
} as const;

const isPaperSize = (written: string): written is PaperSize => Object.hasOwn(PAPER_SIZES, written);

/**
 * `papers FILE --out DIR [--size a4|letter] [--large] [--backs]`: everything of a lesson that is printed, as one document
 * and each part alone. PDF where there is a Chromium to print with, else HTML. Never over a file that is there.
 */
export async function papers(argv: readonly string[], io: Io): Promise<ExitCode> {
  const { values, positionals } = parseArgs({ args: [...argv], allowPositionals: true, options });
  const [file, more] = positionals;
  const { out, size = 'a4' } = values;
  const [isLarge, hasBacks] = [values.large === true, values.backs === true];
  if (file === undefined || more !== undefined || out === undefined) {
    io.complain(papersCommandWords.needs());
    return 2;
  }
  if (!isPaperSize(size)) {
    io.complain(papersCommandWords.sizeUnknown(size, Object.keys(PAPER_SIZES)));
    return 2;
  }
  const id = basename(file, '.md');
  const text = await io.read(file);
  const content = resolve(values.content ?? (await contentFor(file, io)));
  const { library } = await readLibrary(content, join(io.home, 'content'));
  const { plan, problems } = compileLesson(file, text, library, id);
  for (const problem of problems) io.complain(showProblem(problem, text));
  if (plan === null || hasErrors(problems)) return 1;

  const chromium = await lookUpChromium(process.env);
  const ending = chromium === null ? 'html' : 'pdf';
  const variant = [size === 'a4' ? '' : `-${size}`, isLarge ? '-large' : ''].join('');
  const nameOf = (path: string): string => join(out, `${id}-${path}${variant}.${ending}`);
  const taken: string[] = [];
  for (const path of paperPathsOf(plan)) if (await io.exists(nameOf(path))) taken.push(nameOf(path));
  if (taken.length > 0) {
    io.complain(papersCommandWords.exists(taken));
    return 1;
  }
  const asked = { id, file: resolve(file), content, isLarge, hasBacks };
  const made = await makePapers(plan, asked, { size, chromium, home: io.home });
  if (chromium === null) io.complain(papersCommandWords.noBrowser(process.env['CHROMIUM_PATH']));
  for (const { path, bytes, pages } of made) {
    await io.save(nameOf(path), bytes);
    const length = Buffer.byteLength(bytes);
    io.write(
      pages === null
        ? papersCommandWords.saved(nameOf(path), length)
        : papersCommandWords.printed(nameOf(path), pages, length),
    );
  }
  return 0;
}
