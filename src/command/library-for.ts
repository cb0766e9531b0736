import { dirname, join, resolve } from 'node:path';
import { readLibrary, type LoadedLibrary } from '../loaders/read-library.ts';
import type { Io } from './io.ts';

/** The nearest folder above a file that holds `vocabulary.yaml` (a lead's own content folder), or else the product's. */
export async function contentFor(file: string, io: Pick<Io, 'exists' | 'home'>): Promise<string> {
  let folder = dirname(resolve(file));
  for (;;) {
    if (await io.exists(join(folder, 'vocabulary.yaml'))) return folder;
    const above = dirname(folder);
    if (above === folder) return join(io.home, 'content');
    folder = above;
  }
}

/** The library for a lesson file: of the content folder it lies in, or one named, or else the product's own. */
export async function libraryFor(file: string, named: string | undefined, io: Io): Promise<LoadedLibrary> {
  return readLibrary(named ?? (await contentFor(file, io)), join(io.home, 'content'));
}
