import { join } from 'node:path';
import {
  answerInto,
  decodeText,
  intoSite,
  LEAVE_ROW_OUT,
  NO_ANSWERS,
  readFindsIn,
  writeInto,
  type Answers,
  type FindsIn,
  type IntoSite,
} from '../../shared/finds-in/index.ts';
import { hasErrors } from '../../shared/lesson/index.ts';
import type { ContentFile, Site } from '../../shared/library/index.ts';
import { findsIntoReport as report } from '../../shared/words/en/finds-into-report.ts';
import { readFindsInFile } from '../loaders/read-finds-in.ts';
import { readSiteFile, readTablesBeside } from '../loaders/read-site-file.ts';
import { changedLines } from './changed-lines.ts';
import { contentFor, libraryFor } from './library-for.ts';
import type { ExitCode, Io } from './io.ts';

/** What a lead may say at once of every find whose number is there already. */
export const SAME_NUMBER = ['leave', 'replace', 'number-on'] as const;

export interface IntoAsk {
  readonly file: string;
  /** The path of the site file. */
  readonly into: string;
  readonly isWritten: boolean;
  readonly isJson: boolean;
  readonly content: string | undefined;
  /** Makes the pits and fills that the site does not have. */
  readonly makesPlaces: boolean;
  readonly sameNumber: (typeof SAME_NUMBER)[number] | undefined;
}

/** Answers what the options answer, until they answer nothing more. */
function answersFor(list: FindsIn, site: Site, { makesPlaces, sameNumber }: IntoAsk): Answers {
  let answers = NO_ANSWERS;
  const given = new Set<string>();
  for (;;) {
    const open = intoSite(list, site, answers).questions.flatMap((question) => {
      const values = question.proposals.map(({ value }) => value);
      const value =
        question.field === 'context'
          ? // A pit of its own before a fill of another.
            values.findLast((each) => makesPlaces && each.endsWith(' new'))
          : sameNumber === 'number-on'
            ? values.find((each) => /^\d+$/.test(each))
            : values.find((each) => each === (sameNumber === 'leave' ? LEAVE_ROW_OUT : sameNumber));
      return value === undefined ? [] : [{ question, value, key: `${question.row} ${value}` }];
    });
    const next = open.find(({ key }) => !given.has(key));
    if (next === undefined) return answers;
    given.add(next.key);
    answers = answerInto(answers, next.question, next.value, 'cell');
  }
}

function tellInto(file: string, site: Site, into: IntoSite, io: Io): void {
  io.write(report.counts(site.name, into.counts));
  if (into.questions.length > 0) io.write(report.questionsHead());
  for (const { row, reason, asked, proposals } of into.questions)
    io.write(
      report.question(
        file,
        row,
        reason,
        asked,
        proposals.map(({ label }) => label),
      ),
    );
  for (const { row, outcome, find, reason } of into.rows) {
    if (outcome === 'same') io.write(report.row(file, row, reason ?? ''));
    if (outcome === 'replaced' && find !== null) io.write(report.replaced(file, row, find.id));
  }
  for (const { pit, context } of into.places) io.write(report.made(pit, context));
}

/**
 * Takes a list into a site that is there. Without `isWritten` it says what it would do, line by line of each file, and
 * writes nothing.
 */
export async function findsInto(
  ask: IntoAsk,
  tellList: (file: string, list: FindsIn, io: Io) => void,
  io: Io,
): Promise<ExitCode> {
  const { file, into: path } = ask;
  const decoded = decodeText(await io.readBytes(file));
  const { library } = await libraryFor(path, ask.content, io);
  const { vocabulary } = library;
  const words = await readFindsInFile(ask.content ?? (await contentFor(path, io)), join(io.home, 'content'));
  const { value: site, problems } = await readSiteFile(path, vocabulary);
  if (site === null || hasErrors(problems)) {
    io.complain(report.siteHasErrors(path));
    return 1;
  }
  const list = readFindsIn(decoded.text, { vocabulary, words, site, status: site.status });
  const into = intoSite(list, site, answersFor(list, site, ask));
  const tables = (await readTablesBeside(path)).map((table): ContentFile => ({ path: table.file, ...table }));
  const yaml = { path, file: path, text: await io.read(path) };
  const written = writeInto({ yaml, tables }, site, into, vocabulary);
  const old = new Map([yaml, ...tables].map(({ path: at, text }) => [at, text]));
  const changed = (written ?? []).filter(({ path: at, text }) => old.get(at) !== text);
  if (ask.isJson) {
    const files = changed.map(({ path: at }) => ({ path: at, isNew: !old.has(at) }));
    const { counts, rows, questions, places } = into;
    const told = { site: site.id, counts, rows, questions, places, files, written: ask.isWritten };
    io.write(`${JSON.stringify(told, null, 2)}\n`);
  } else {
    tellList(file, list, io);
    tellInto(file, site, into, io);
  }
  if (written === null) {
    io.complain(report.unwritten(path));
    return 1;
  }
  if (changed.length === 0) {
    if (!ask.isJson) io.write(report.nothingNew());
    return 0;
  }
  for (const { path: at, text } of changed) {
    const before = old.get(at);
    if (!ask.isJson)
      io.write(report.file(at, before === undefined, ask.isWritten, changedLines(before ?? '', text)));
    if (!ask.isWritten) continue;
    if (before === undefined) await io.save(at, text);
    else await io.replace(at, text);
  }
  if (!ask.isWritten && !ask.isJson) io.write(report.notYet());
  return 0;
}
