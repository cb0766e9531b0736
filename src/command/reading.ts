import { parseArgs } from 'node:util';
import { lineMap, readPassages } from '../../shared/lesson/index.ts';
import { readingTarget } from '../../shared/compile/index.ts';
import { BANDS, tradeWords } from '../../shared/library/index.ts';
import { FEWEST_WORDS, MEASURES, readingReport } from '../../shared/reading/index.ts';
import { readingWords } from '../../shared/words/en/reading-report.ts';
import type { ExitCode, Io } from './io.ts';
import { libraryFor } from './library-for.ts';

/** `reading FILE --band B [--json]`: how hard a lesson, or any text, is to read, and where. */
export async function reading(argv: readonly string[], io: Io): Promise<ExitCode> {
  const { values, positionals } = parseArgs({
    args: [...argv],
    allowPositionals: true,
    options: { json: { type: 'boolean' }, band: { type: 'string' }, content: { type: 'string' } },
  });
  const [file] = positionals;
  const band = BANDS.find((known) => known === values.band);
  if (file === undefined || band === undefined) {
    io.complain(readingWords.needsBand(BANDS));
    return 2;
  }
  const text = await io.read(file);
  const { library } = await libraryFor(file, values.content, io);
  const target = readingTarget(library, band);
  const report = readingReport(readPassages(text), target, tradeWords(library));
  const { counts, measures } = report;
  const lines = lineMap(text);
  const hard = report.hard.map(({ offset, text: words, why }) => {
    const { line, column } = lines.at(offset);
    return { line, column, text: words, why: readingWords.why(why) };
  });
  if (values.json === true) {
    const { words, sentences, syllables } = counts;
    const { isTooShort, readAloud, isWithinTarget, tradeWords: glossary } = report;
    const said = {
      words,
      sentences,
      syllables,
      measures,
      target,
      isTooShort,
      readAloud,
      isWithinTarget,
      glossary,
      hard,
    };
    io.write(`${JSON.stringify(said, null, 2)}\n`);
    return 0;
  }
  io.write(readingWords.head(counts.words, counts.sentences, counts.syllables));
  for (const name of MEASURES) io.write(readingWords.measure(name, measures[name]));
  if (report.isTooShort) io.write(readingWords.tooShort(FEWEST_WORDS));
  if (report.readAloud) io.write(readingWords.readAloud(band));
  if (target.gradeMost !== null && report.isWithinTarget !== null)
    io.write(readingWords.target(target.gradeMost, report.isWithinTarget));
  io.write(readingWords.trade(report.tradeWords));
  for (const { line, column, text: words, why } of hard)
    io.write(readingWords.hard(file, line, column, words, why));
  io.write(readingWords.honest());
  return 0;
}
