import { dirname, join, resolve } from 'node:path';
import { readLibrary, type LoadedLibrary } from '../loaders/read-library.ts';
import type { Io } from './io.ts';

/**
 * The library for a lesson file: the nearest folder above it that holds `vocabulary.yaml` (a lead's own content
 * folder), or one named, or else the product's own.
 */
export async function libraryFor(file: string, named: string | undefined, io: Io): Promise<LoadedLibrary> {
  if (named !== undefined) return readLibrary(named);
  let folder = dirname(resolve(file));
  for (;;) {
    if (await io.exists(join(folder, 'vocabulary.yaml'))) return readLibrary(folder);
    const above = dirname(folder);
    if (above === folder) return readLibrary(join(io.home, 'content'));
    folder = above;
  }
}
