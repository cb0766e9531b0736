import { readdir, readFile } from 'node:fs/promises';
import { basename, join } from 'node:path';
import { checkLesson, type CompiledLesson } from '../../shared/compile/index.ts';
import { BANDS, youngest, type Library } from '../../shared/library/index.ts';

/** A lesson file of a folder, compiled; its id is its name without the ending. */
export interface LoadedLesson extends CompiledLesson {
  readonly id: string;
  readonly file: string;
  readonly text: string;
}

/** Youngest first, then by name; what does not compile comes last. */
const byAge = (a: LoadedLesson, b: LoadedLesson): number => ageOf(a) - ageOf(b) || (a.id < b.id ? -1 : 1);

const ageOf = ({ plan }: LoadedLesson): number =>
  plan === null ? BANDS.length : BANDS.indexOf(youngest(plan.bands));

/** Compiles every `.md` file of a folder, for the youngest first. The id seeds the dealing of finds. */
export async function readLessons(folder: string, library: Library): Promise<readonly LoadedLesson[]> {
  const names = (await readdir(folder)).filter((name) => name.endsWith('.md')).toSorted();
  const lessons = await Promise.all(
    names.map(async (name): Promise<LoadedLesson> => {
      const file = join(folder, name);
      const id = basename(name, '.md');
      const text = await readFile(file, 'utf8');
      return { id, file, text, ...checkLesson(file, text, library, id) };
    }),
  );
  return lessons.toSorted(byAge);
}
