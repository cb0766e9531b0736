import { access, readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Curricula, Framework } from '../../shared/curriculum/index.ts';
import type { Problem } from '../../shared/lesson/index.ts';
import { readClaimRules, readFramework, type FrameworkWords } from '../../shared/library/index.ts';

const isThere = (path: string): Promise<boolean> =>
  access(path).then(
    () => true,
    () => false,
  );

/** The text of a file of the folder, or else of the product's own content. */
const ownOr = async (folder: string, home: string, name: string): Promise<string> =>
  (await isThere(join(folder, name))) ? join(folder, name) : join(home, name);

/** The rules claims are judged by: the folder's own, or else the product's. @throws Error when they cannot be read. */
async function readRules(folder: string, home: string) {
  const path = await ownOr(folder, home, 'claim-rules.yaml');
  const { value, problems } = readClaimRules(path, await readFile(path, 'utf8'));
  if (value !== null) return { rules: value };
  const [first] = problems;
  throw new Error(`${path}:${first?.from.line ?? 1}: expected ${first?.expected ?? 'the rules of claims'}`);
}

/** The kinds and conditions that a framework file may point to. @throws Error when the rules cannot be read. */
export async function readFrameworkWords(folder: string, home: string): Promise<FrameworkWords> {
  const { rules } = await readRules(folder, home);
  return { kinds: rules.kinds, conditions: rules.conditions.map(({ id }) => id) };
}

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
  const { rules } = await readRules(folder, home);
  const { kinds, conditions, steps } = rules;
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
