import { basename, join } from 'node:path';
import { parseArgs } from 'node:util';
import {
  decodeText,
  readFindsIn,
  siteHead,
  tellGuesses,
  writeFindsTable,
  writeSite,
  type FindsIn,
} from '../../shared/finds-in/index.ts';
import { nearest } from '../../shared/lesson/index.ts';
import { commandWords } from '../../shared/words/en/command.ts';
import { findsInReport as report } from '../../shared/words/en/finds-in-report.ts';
import { findsIntoReport as intoReport } from '../../shared/words/en/finds-into-report.ts';
import { findsInWords } from '../../shared/words/en/finds-in.ts';
import { readFindsInFile } from '../loaders/read-finds-in.ts';
import { contentFor, libraryFor } from './library-for.ts';
import { findsInto, SAME_NUMBER } from './finds-into.ts';
import type { ExitCode, Io } from './io.ts';

function tell(file: string, list: FindsIn, io: Io): void {
  io.write(report.counts(file, list.counts));
  io.write(report.columnsHead());
  for (const { index, header, guess, unit, sureness, why } of list.columns) {
    io.write(report.column(index, header, guess, unit, sureness, findsInWords.column(why)));
  }
  io.write(report.pitsHead());
  for (const { pit, contexts, why } of list.pits) io.write(report.pit(pit, contexts, why));
  const guesses = tellGuesses(list.rows);
  if (guesses.length > 0) io.write(report.guessesHead());
  for (const { field, rows, why } of guesses) io.write(report.guess(field, rows, why));
  if (list.questions.length > 0) io.write(report.questionsHead());
  for (const question of list.questions) io.write(report.question(file, question));
  const out = list.rows.filter(({ outcome }) => outcome === 'left-out');
  if (out.length > 0) io.write(report.leftOutHead());
  for (const { row, reason } of out) io.write(report.leftOut(file, row, reason ?? ''));
}

/**
 * `finds FILE.csv --into SITE.yaml [--new-places] [--same-number W] [--write]`: into a site that is there (`finds-into.ts`).
 *
 * `finds FILE.csv [--site ID] [--out DIR] [--json]`: a finds list as it comes, with what is guessed and what is asked at
 * row:column; with `--out` the finds that are ready as a site file and a finds table, never over files that are there.
 * A question is an answer, not an error of the command.
 */
export async function finds(argv: readonly string[], io: Io): Promise<ExitCode> {
  const text = { type: 'string' } as const;
  const { values, positionals } = parseArgs({
    args: [...argv],
    allowPositionals: true,
    options: {
      json: { type: 'boolean' },
      out: text,
      site: text,
      content: text,
      into: text,
      write: { type: 'boolean' },
      'new-places': { type: 'boolean' },
      'same-number': text,
    },
  });
  const [file] = positionals;
  if (file === undefined) {
    io.complain(report.needs());
    return 2;
  }
  const sameNumber = SAME_NUMBER.find((word) => word === values['same-number']);
  if (values['same-number'] !== undefined && sameNumber === undefined) {
    io.complain(intoReport.sameNumberUnknown(values['same-number'], SAME_NUMBER));
    return 2;
  }
  const forInto = [values.write, values['new-places'], sameNumber];
  if (values.into === undefined && forInto.some((each) => each !== undefined)) {
    io.complain(intoReport.onlyInto());
    return 2;
  }
  if (values.into !== undefined) {
    if (values.out !== undefined || values.site !== undefined) {
      io.complain(intoReport.notBoth());
      return 2;
    }
    const { into, write: isWritten = false, json: isJson = false, content } = values;
    const ask = {
      file,
      into,
      isWritten,
      isJson,
      content,
      makesPlaces: values['new-places'] === true,
      sameNumber,
    };
    return findsInto(ask, tell, io);
  }
  const decoded = decodeText(await io.readBytes(file));
  const { library } = await libraryFor(file, values.content, io);
  const words = await readFindsInFile(
    values.content ?? (await contentFor(file, io)),
    join(io.home, 'content'),
  );
  const site = library.sites.find(({ id }) => id === values.site) ?? null;
  if (values.site !== undefined && site === null) {
    const known = library.sites.map(({ id }) => id);
    io.complain(report.siteUnknown(values.site, nearest(values.site, known), known));
    return 2;
  }
  const list = readFindsIn(decoded.text, { vocabulary: library.vocabulary, words, site });
  if (values.json === true) {
    const { rows, ...rest } = list;
    const kept = rows.map(({ row, outcome, find, reason, guessed }) => ({
      row,
      outcome,
      find: find?.id ?? null,
      reason,
      guessed,
    }));
    io.write(`${JSON.stringify({ encoding: decoded.encoding, ...rest, rows: kept }, null, 2)}\n`);
  } else {
    if (decoded.encoding !== 'utf-8') io.write(report.encoding(decoded.encoding));
    tell(file, list, io);
  }
  return values.out === undefined ? 0 : write(values.out, file, list, values.json === true, io);
}

async function write(
  folder: string,
  file: string,
  list: FindsIn,
  isQuiet: boolean,
  io: Io,
): Promise<ExitCode> {
  if (list.finds.length === 0) {
    io.complain(report.nothingToWrite());
    return 1;
  }
  const head = siteHead(basename(file).replace(/\.[^.]+$/, ''));
  const sitePath = join(folder, `${head.id}.yaml`);
  const tablePath = join(folder, `${head.id}.finds.csv`);
  for (const path of [sitePath, tablePath]) {
    if (!(await io.exists(path))) continue;
    io.complain(commandWords.fileExists(path));
    return 1;
  }
  await io.save(sitePath, writeSite(head, list.finds));
  await io.save(tablePath, writeFindsTable(list.finds));
  if (!isQuiet) io.write(report.written(sitePath, tablePath, list.finds.length));
  return 0;
}
