import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { readFindsInWords, type FindsInWords } from '../../shared/finds-in/index.ts';
import { hasErrors } from '../../shared/lesson/index.ts';

/**
 * Reads `finds-in/words.yaml` of a content folder, or the product's own where the folder has none.
 *
 * @throws Error when it cannot be read: without it no list can be taken in.
 */
export async function readFindsInFile(folder: string, productContent = folder): Promise<FindsInWords> {
  const own = join(folder, 'finds-in/words.yaml');
  const file = existsSync(own) ? own : join(productContent, 'finds-in/words.yaml');
  const { value, problems } = readFindsInWords(file, await readFile(file, 'utf8'));
  const [first] = problems;
  if (value === null || hasErrors(problems)) {
    throw new Error(
      `${file}:${first?.from.line ?? 1}: expected ${first?.expected ?? 'a readable file'}, received ${first?.received ?? 'none'}`,
    );
  }
  return value;
}
