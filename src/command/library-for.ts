import { dirname, join, resolve } from 'node:path';
import { readLibrary, type LoadedLibrary } from '../loaders/read-library.ts';
import type { Io } from './io.ts';

/**
 * The library for a lesson file: the nearest folder above it that holds `vocabulary.yaml` (a lead's own content
 * folder), or one named, or else the product's own.
 */
export async function libraryFor(file: string, named: string | undefined, io: Io): Promise<LoadedLibrary> {
  const own = join(io.home, 'content');
  if (named !== undefined) return readLibrary(named, own);
  let folder = dirname(resolve(file));
  for (;;) {
    if (await io.exists(join(folder, 'vocabulary.yaml'))) return readLibrary(folder, own);
    const above = dirname(folder);
    if (above === folder) return readLibrary(own, own);
    folder = above;
  }
}
