import { parseArgs } from 'node:util';
import { slug } from '../../shared/library/index.ts';
import { commandWords, starterLesson } from '../../shared/words/en/command.ts';
import type { ExitCode, Io } from './io.ts';

/** `new NAME`: a commented lesson that checks clean, as NAME.md in this folder; never over a file that is there. */
export async function newLesson(argv: readonly string[], io: Io): Promise<ExitCode> {
  const { positionals } = parseArgs({ args: [...argv], allowPositionals: true, options: {} });
  const name = positionals.join(' ').replace(/\.md$/, '');
  const stem = name.includes('/') ? name : slug(name);
  if (stem === '') {
    io.complain(commandWords.newNeedsName());
    return 2;
  }
  const file = `${stem}.md`;
  if (await io.exists(file)) {
    io.complain(commandWords.fileExists(file));
    return 1;
  }
  await io.save(file, starterLesson(name.split('/').at(-1) ?? name));
  io.write(commandWords.written(file));
  return 0;
}
