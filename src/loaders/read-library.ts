import { readContent, type ReadContent } from '../../shared/library/index.ts';
import { readFiles, readPhotos } from './read-files.ts';

/** A library read from a folder, with all that is wrong in its files. Files with errors are left out. */
export type LoadedLibrary = ReadContent;

/**
 * Reads the library of a content folder: `readContent` on its files.
 *
 * @param productContent Where the product's own content is: its figures, hazards, curricula and notes serve where the folder has none.
 * @throws Error when the vocabulary, the bands or the sources cannot be read at all: nothing works without them.
 */
export async function readLibrary(folder: string, productContent = folder): Promise<LoadedLibrary> {
  const files = await readFiles(folder);
  const home = productContent === folder ? files : await readFiles(productContent);
  return readContent(files, home, await readPhotos(folder));
}
