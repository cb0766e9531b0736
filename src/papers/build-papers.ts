import { spawn } from 'node:child_process';
import { readdir, readFile } from 'node:fs/promises';
import { basename, join } from 'node:path';
import { ASKED, type AskedPapers } from './asked.ts';

/** Runs a program to its end. @throws Error with what it complained of, where it did not end well. */
async function run(argv: readonly string[], folder: string, environment: NodeJS.ProcessEnv): Promise<void> {
  const child = spawn(process.execPath, [...argv], { cwd: folder, env: environment });
  let told = '';
  child.stdout.on('data', (text: Buffer) => (told += text.toString()));
  child.stderr.on('data', (text: Buffer) => (told += text.toString()));
  const code = await new Promise<number | null>((resolve, reject) => {
    child.on('error', reject);
    child.on('close', resolve);
  });
  if (code !== 0) throw new Error(told.trim().split('\n').slice(-5).join('\n'));
}

/**
 * The papers of one lesson as whole HTML pages, by their paths: built by Astro from the same components as the site, in a
 * process of its own. Needs no network.
 *
 * @param home The folder of the product.
 * @param work An empty folder to build in; the caller clears it away.
 */
export async function buildPapers(
  asked: AskedPapers,
  home: string,
  work: string,
): Promise<ReadonlyMap<string, string>> {
  await run(
    [
      join(home, 'node_modules/astro/bin/astro.mjs'),
      'build',
      '--config',
      'src/papers/astro.config.mjs',
      '--silent',
    ],
    home,
    {
      ...process.env,
      [ASKED]: JSON.stringify(asked),
      PITLORE_PAPERS_WORK: work,
      ASTRO_TELEMETRY_DISABLED: '1',
    },
  );
  const out = join(work, 'out');
  const names = (await readdir(out)).filter((name) => name.endsWith('.html'));
  return new Map(
    await Promise.all(
      names.map(async (name) => [basename(name, '.html'), await readFile(join(out, name), 'utf8')] as const),
    ),
  );
}
