import { access, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { readClaimRules, type FrameworkWords } from '../../shared/library/index.ts';

/**
 * The kinds and conditions that a framework file may point to: by the folder's own rules of claims, or else the product's.
 *
 * @throws Error when the rules cannot be read.
 */
export async function readFrameworkWords(folder: string, home: string): Promise<FrameworkWords> {
  const own = join(folder, 'claim-rules.yaml');
  const path = await access(own).then(
    () => own,
    () => join(home, 'claim-rules.yaml'),
  );
  const { value, problems } = readClaimRules(path, await readFile(path, 'utf8'));
  if (value !== null) return { kinds: value.kinds, conditions: value.conditions.map(({ id }) => id) };
  const [first] = problems;
  throw new Error(`${path}:${first?.from.line ?? 1}: expected ${first?.expected ?? 'the rules of claims'}`);
}
