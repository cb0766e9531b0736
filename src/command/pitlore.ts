import { access, mkdir, readFile, rename, writeFile } from 'node:fs/promises';
import { dirname } from 'node:path';
import { fileURLToPath } from 'node:url';
import { commandWords } from '../../shared/words/en/command.ts';
import { nearest } from '../../shared/lesson/index.ts';
import { adults } from './adults.ts';
import { alike } from './alike.ts';
import { check } from './check.ts';
import { claims } from './claims.ts';
import { compile } from './compile.ts';
import { hazards } from './hazards.ts';
import { coverage } from './coverage.ts';
import { day } from './day.ts';
import { hours } from './hours.ts';
import { draft } from './draft.ts';
import { draw } from './draw.ts';
import { dropin } from './dropin.ts';
import { fair } from './fair.ts';
import { finds } from './finds.ts';
import { framework } from './framework.ts';
import type { ExitCode, Io } from './io.ts';
import { newLesson } from './new.ts';
import { notes } from './notes.ts';
import { orders } from './orders.ts';
import { pack } from './pack.ts';
import { papers } from './papers.ts';
import { reading } from './reading.ts';
import { score } from './score.ts';
import { swap } from './swap.ts';

const verbs: Readonly<Record<string, (argv: readonly string[], io: Io) => Promise<ExitCode>>> = {
  adults,
  alike,
  check,
  claims,
  compile,
  coverage,
  day,
  draft,
  draw,
  dropin,
  fair,
  finds,
  framework,
  hazards,
  hours,
  new: newLesson,
  notes,
  orders,
  pack,
  papers,
  reading,
  score,
  swap,
};

const io: Io = {
  write: (text) => void process.stdout.write(text),
  complain: (text) => void process.stderr.write(text.endsWith('\n') ? text : `${text}\n`),
  read: (path) => readFile(path, 'utf8'),
  readBytes: (path) => readFile(path),
  save: async (path, bytes) => {
    await mkdir(dirname(path), { recursive: true });
    await writeFile(path, bytes, { flag: 'wx' });
  },
  replace: async (path, text) => {
    const beside = `${path}.new`;
    await writeFile(beside, text, { flag: 'wx' });
    await rename(beside, path);
  },
  exists: (path) =>
    access(path).then(
      () => true,
      () => false,
    ),
  home: fileURLToPath(new URL('../../', import.meta.url)),
};

async function run(argv: readonly string[]): Promise<ExitCode> {
  const [name, ...rest] = argv;
  if (name === undefined || name === 'help' || name === '--help') {
    io.write(commandWords.help());
    return 0;
  }
  const verb = Object.hasOwn(verbs, name) ? verbs[name] : undefined;
  if (verb === undefined) {
    io.complain(commandWords.verbUnknown(name, nearest(name, Object.keys(verbs)), Object.keys(verbs)));
    return 2;
  }
  try {
    return await verb(rest, io);
  } catch (error) {
    // A file that cannot be read, or an option that is not known: said in one line.
    io.complain(commandWords.failed(name, error instanceof Error ? error.message : String(error)));
    return 2;
  }
}

// A reader that has seen enough (head, say) closes the pipe: that is no fault of ours.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
});
process.exitCode = await run(process.argv.slice(2));
