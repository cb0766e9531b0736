import { access, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Problem } from '../../shared/lesson/index.ts';
import {
  readComparisons,
  readMakingFigures,
  type Library,
  type ReadFile,
} from '../../shared/library/index.ts';

const isThere = (file: string): Promise<boolean> =>
  access(file).then(
    () => true,
    () => false,
  );

/**
 * Reads `figures/` of a content folder. A file that is not there is read from the product's own content, file by file:
 * figures are measured by others, so a lead has them without copying them. One with errors is left out and told of; the
 * product's own does not stand in for it unseen.
 */
export async function readFigures(
  folder: string,
  productContent: string,
): Promise<{
  readonly figures: Pick<Library, 'making' | 'comparisons'>;
  readonly problems: readonly Problem[];
}> {
  const read = async <Value>(
    name: string,
    reader: (file: string, text: string) => ReadFile<Value>,
  ): Promise<{ readonly value: Value | null; readonly problems: readonly Problem[] }> => {
    for (const content of [folder, productContent]) {
      const file = join(content, 'figures', name);
      if (await isThere(file)) return reader(file, await readFile(file, 'utf8'));
    }
    return { value: null, problems: [] };
  };
  const [making, comparisons] = await Promise.all([
    read('making-hours.yaml', readMakingFigures),
    read('comparisons.yaml', readComparisons),
  ]);
  return {
    figures: { making: making.value, comparisons: comparisons.value ?? [] },
    problems: [...making.problems, ...comparisons.problems],
  };
}
