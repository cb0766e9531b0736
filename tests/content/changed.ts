import { existsSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { home } from '../demo.ts';

/**
 * The committed text of a golden file. Where it differs from `now`, or is not there, `now` is written beside it as
 * `*.changed.*`, which git ignores, so that the difference can be looked at and taken over by hand.
 */
export function golden(name: string, now: string): string {
  const path = join(home, 'tests/content/golden', name);
  const changed = path.replace(/(\.[a-z]+)$/, '.changed$1');
  const kept = existsSync(path) ? readFileSync(path, 'utf8') : '';
  if (kept === now) rmSync(changed, { force: true });
  else writeFileSync(changed, now);
  return kept;
}
