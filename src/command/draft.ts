import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { isKindName, kindNames, type KindName } from '../../shared/activities/index.ts';
import { draftedKinds, draftVisit, type Draft } from '../../shared/drafting/index.ts';
import { nearest } from '../../shared/lesson/index.ts';
import { BANDS, type Band, type Site } from '../../shared/library/index.ts';
import { commandWords } from '../../shared/words/en/command.ts';
import { draftReport as report } from '../../shared/words/en/draft-report.ts';
import type { ExitCode, Io } from './io.ts';
import { libraryFor } from './library-for.ts';

const text = { type: 'string' } as const;
const many = { type: 'string', multiple: true } as const;
const options = {
  bands: text,
  minutes: text,
  seed: text,
  kinds: text,
  subjects: text,
  pin: many,
  title: text,
  out: text,
  content: text,
  why: { type: 'boolean' },
  json: { type: 'boolean' },
} as const;
type Values = ReturnType<typeof parseArgs<{ options: typeof options }>>['values'];

const isBand = (word: string): word is Band => BANDS.some((band) => band === word);
const listOf = (written: string): readonly string[] =>
  written
    .split(',')
    .map((word) => word.trim())
    .filter((word) => word !== '');

/** The bands and kinds asked for, or the sentence that says which word is not known. */
function askedOf(
  values: Values,
): { readonly bands: readonly Band[]; readonly kinds: readonly KindName[] } | string {
  const bands = listOf(values.bands ?? '');
  const strangeBand = bands.find((band) => !isBand(band));
  if (strangeBand !== undefined)
    return report.wordUnknown('band', strangeBand, nearest(strangeBand, BANDS), BANDS);
  const kinds = values.kinds === undefined ? draftedKinds : listOf(values.kinds);
  const strangeKind = kinds.find((kind) => !isKindName(kind));
  if (strangeKind !== undefined)
    return report.wordUnknown('kind', strangeKind, nearest(strangeKind, kindNames), kindNames);
  if (!/^\d{1,3}$/.test(values.minutes ?? '')) return report.minutesUnfit(values.minutes ?? '');
  return { bands: bands.filter(isBand), kinds: kinds.filter(isKindName) };
}

const asJson = ({ claims, ...draft }: Draft, seed: string): string =>
  `${JSON.stringify({ seed, ...draft, claims: claims.map(({ outcome, grade }) => ({ outcome, grade })) }, null, 2)}\n`;

/**
 * `draft SITE --bands A,B --minutes N [--seed S] [--kinds …] [--subjects …] [--pin FIND]… [--out FILE] [--why] [--json]`:
 * a lesson made of a site's finds; the reasons, with their figures, where it is kept or `--why` asks. 1 where none can be made.
 */
export async function draft(argv: readonly string[], io: Io): Promise<ExitCode> {
  const { values, positionals } = parseArgs({ args: [...argv], allowPositionals: true, options });
  const [siteId] = positionals;
  if (siteId === undefined || values.bands === undefined || values.minutes === undefined) {
    io.complain(report.needs());
    return 2;
  }
  const asked = askedOf(values);
  if (typeof asked === 'string') {
    io.complain(asked);
    return 2;
  }
  const { library } = await libraryFor(join(values.content ?? '.', 'any.md'), values.content, io);
  const site: Site | undefined = library.sites.find(({ id }) => id === siteId);
  if (site === undefined) {
    const known = library.sites.map(({ id }) => id);
    io.complain(report.wordUnknown('site', siteId, nearest(siteId, known), known));
    return 2;
  }
  const seed = values.seed ?? '1';
  const made = draftVisit(library, site, {
    ...asked,
    minutes: Number(values.minutes),
    seed,
    ...(values.subjects === undefined ? {} : { subjects: listOf(values.subjects) }),
    ...(values.pin === undefined ? {} : { pins: values.pin.flatMap(listOf) }),
    ...(values.title === undefined ? {} : { title: values.title }),
  });
  if (values.json === true) io.write(asJson(made, seed));
  for (const said of values.json === true ? [] : made.lacking) io.complain(said);
  if (made.text === null) return 1;
  if (values.out !== undefined) {
    if (await io.exists(values.out)) {
      io.complain(commandWords.fileExists(values.out));
      return 1;
    }
    await io.save(values.out, made.text);
    if (values.json !== true) {
      io.write(commandWords.written(values.out));
      for (const reason of made.reasons) io.write(report.reason(reason));
    }
  } else if (values.json !== true) {
    io.write(made.text);
    if (values.why === true) for (const reason of made.reasons) io.complain(reason);
  }
  return 0;
}
