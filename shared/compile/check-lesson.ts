import { byPlace, type ReadYaml } from '../lesson/index.ts';
import type { Library } from '../library/library.ts';
import { readingCautions } from './check-reading.ts';
import { compileLesson, type CompiledLesson } from './compile-lesson.ts';

/**
 * Compiles a lesson file and adds what only an author needs: cautions where it is hard to read. Apart from
 * {@link compileLesson}, so that what plays a lesson does not carry lists of words and formulae.
 */
export function checkLesson(
  file: string,
  text: string,
  library: Library,
  seed: string,
  readRun?: ReadYaml,
): CompiledLesson {
  const compiled = compileLesson(file, text, library, seed, readRun);
  if (compiled.words === null) return compiled;
  const cautions = readingCautions(compiled.words, library);
  return cautions.length === 0
    ? compiled
    : { ...compiled, problems: [...compiled.problems, ...cautions].toSorted(byPlace) };
}
