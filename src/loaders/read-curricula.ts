import { access, readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Curricula, Framework } from '../../shared/curriculum/index.ts';
import type { Problem } from '../../shared/lesson/index.ts';
import { readClaimRules, readFramework } from '../../shared/library/index.ts';

const isThere = (path: string): Promise<boolean> =>
  access(path).then(
    () => true,
    () => false,
  );

/** The text of a file of the folder, or else of the product's own content. */
const ownOr = async (folder: string, home: string, name: string): Promise<string> =>
  (await isThere(join(folder, name))) ? join(folder, name) : join(home, name);

/**
 * Reads the frameworks and the rules claims are judged by. The product's own frameworks always serve; a folder
 * `curricula` in a lead's content adds to them, and a file with the same id takes the place of ours.
 *
 * @throws Error when the rules cannot be read at all.
 */
export async function readCurricula(
  folder: string,
  home: string,
): Promise<{ readonly curricula: Curricula; readonly problems: readonly Problem[] }> {
  const rulesPath = await ownOr(folder, home, 'claim-rules.yaml');
  const rules = readClaimRules(rulesPath, await readFile(rulesPath, 'utf8'));
  const first = rules.problems[0];
  if (rules.value === null) {
    throw new Error(
      `${rulesPath}:${first?.from.line ?? 1}: expected ${first?.expected ?? 'the rules of claims'}`,
    );
  }
  const { kinds, conditions, steps } = rules.value;
  const known = { kinds, conditions: conditions.map(({ id }) => id) };
  const frameworks = new Map<string, Framework>();
  const problems: Problem[] = [];
  for (const place of new Set([home, folder])) {
    const within = join(place, 'curricula');
    if (!(await isThere(within))) continue;
    const names = (await readdir(within)).filter((name) => name.endsWith('.yaml')).toSorted();
    for (const name of names) {
      const file = join(within, name);
      const read = readFramework(file, await readFile(file, 'utf8'), known);
      problems.push(...read.problems);
      if (read.value !== null) frameworks.set(read.value.id, read.value);
    }
  }
  return { curricula: { frameworks: [...frameworks.values()], conditions, steps }, problems };
}
