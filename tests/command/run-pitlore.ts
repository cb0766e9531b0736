import { spawnSync } from 'node:child_process';
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { home } from '../demo.ts';

/** What a verb gave back to whoever called it. */
export interface Ran {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

/** What Node has compiled is kept between the processes: each begins in two thirds of the time. */
const COMPILED = join(tmpdir(), 'pitlore-compiled');

/** Runs the command line as a process of its own, in a folder. */
export function runPitlore(
  argv: readonly string[],
  folder: string = home,
  environment: Readonly<Record<string, string>> = {},
): Ran {
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    [join(home, 'src/command/pitlore.ts'), ...argv],
    {
      cwd: folder,
      encoding: 'utf8',
      env: { ...process.env, NODE_COMPILE_CACHE: COMPILED, ...environment },
    },
  );
  return { code: status, out: stdout, err: stderr };
}

/** An empty folder that nothing else uses. */
export const newFolder = (): string => mkdtempSync(join(tmpdir(), 'pitlore-'));
