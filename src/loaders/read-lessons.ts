import { readdir, readFile } from 'node:fs/promises';
import { basename, join } from 'node:path';
import { compileLesson, type CompiledLesson } from '../../shared/compile/index.ts';
import type { Library } from '../../shared/library/index.ts';

/** A lesson file of a folder, compiled; its id is its name without the ending. */
export interface LoadedLesson extends CompiledLesson {
  readonly id: string;
  readonly file: string;
  readonly text: string;
}

/** Compiles every `.md` file of a folder, in the order of their names. The id seeds the dealing of finds. */
export async function readLessons(folder: string, library: Library): Promise<readonly LoadedLesson[]> {
  const names = (await readdir(folder)).filter((name) => name.endsWith('.md')).toSorted();
  return Promise.all(
    names.map(async (name): Promise<LoadedLesson> => {
      const file = join(folder, name);
      const id = basename(name, '.md');
      const text = await readFile(file, 'utf8');
      return { id, file, text, ...compileLesson(file, text, library, id) };
    }),
  );
}
