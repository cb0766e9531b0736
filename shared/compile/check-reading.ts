import { problemAt, type Passage, type Problem, type SourceText } from '../lesson/index.ts';
import { tradeWords, type Band, type Library } from '../library/index.ts';

import { hardReading, type HardReading, type ReadingTarget } from '../reading/index.ts';
import { readingProblems } from '../words/en/reading-problems.ts';

/** The words of a lesson as they stand in its file, and for whom they are. */
export interface LessonWords {
  readonly source: SourceText;
  readonly passages: readonly Passage[];
  readonly bands: readonly Band[];
}

/** What reading may ask of one band. */
export function readingTarget({ bands }: Pick<Library, 'bands'>, band: Band): ReadingTarget {
  const limits = bands.find((row) => row.band === band);
  return {
    band,
    readsAlone: limits?.readsAlone ?? true,
    gradeMost: limits?.readingGradeMost ?? null,
    wordsPerSentence: limits?.wordsPerSentence ?? null,
  };
}

function wordsOf({ why, band, readsAlone, hardWords, more }: HardReading) {
  return why.what === 'sentence'
    ? readingProblems.longSentence(why.words, why.most, band, readsAlone, hardWords, more)
    : readingProblems.highGrade(why.grade, why.most, why.words, band, readsAlone, hardWords);
}

/** Cautions where a lesson is hard to read for its bands. */
export function readingCautions(words: LessonWords, library: Library): readonly Problem[] {
  const targets = library.bands
    .filter(({ band }) => words.bands.includes(band))
    .map(({ band }) => readingTarget(library, band));
  return hardReading(words.passages, targets, tradeWords(library)).map((hard) =>
    problemAt(words.source, hard, { code: 'reading-hard', grade: 'caution', ...wordsOf(hard) }),
  );
}
