import type { Band } from '../library/bands.ts';
import { countText, syllablesOf, type Counts } from './count.ts';
import { familiarAtSeven, familiarAtTen } from './familiar.ts';
import { measure, MEASURES, type Measure } from './measures.ts';
import { sentencesOf, type Sentence, type Word } from './sentences.ts';

/** The limits of reading for a band; null where nothing is read alone. */
export interface ReadingTarget {
  readonly band: Band;
  readonly readsAlone: boolean;
  /** The highest Flesch–Kincaid grade; null where an adult reads. */
  readonly gradeMost: number | null;
  readonly wordsPerSentence: number | null;
}

/** A sentence or a word that is hard for the band. */
export interface HardPlace {
  readonly offset: number;
  readonly text: string;
  readonly why:
    | { readonly what: 'sentence'; readonly words: number; readonly most: number }
    | { readonly what: 'word'; readonly syllables: number };
}

export interface ReadingReport {
  readonly counts: Counts;
  /** Null for each measure where the text is too short for any formula. */
  readonly measures: Readonly<Record<Measure, number | null>>;
  readonly isTooShort: boolean;
  readonly readAloud: boolean;
  /** Null where there is no target, or the text is too short to say. */
  readonly isWithinTarget: boolean | null;
  readonly hard: readonly HardPlace[];
  /** The trade's own words that stand in the text: they belong in the glossary and are not counted as hard. */
  readonly tradeWords: readonly string[];
}

// The formulae were fitted to samples of 100 words; below that they say little (common practice).
export const FEWEST_WORDS = 100;

/** Words of this many syllables, not on the list of the age, are pointed at (common practice). */
const HARD_SYLLABLES = 3;

const YOUNG: readonly Band[] = ['4-5', '5-7', '7-9'];

/** Words of a sentence that are long, and not known to most readers of the band, and not of the trade. */
export function hardWordsOf(
  { words }: Sentence,
  band: Band,
  isTrade: (word: string) => boolean,
): readonly Word[] {
  const familiar = YOUNG.includes(band) ? familiarAtSeven : familiarAtTen;
  return words.filter(
    ({ text, isName }) =>
      !isName && syllablesOf(text) >= HARD_SYLLABLES && !familiar(text) && !isTrade(text.toLowerCase()),
  );
}

function hardPlaces(
  sentences: readonly Sentence[],
  target: ReadingTarget,
  isTrade: (word: string) => boolean,
): readonly HardPlace[] {
  const seen = new Set<string>();
  return sentences.flatMap((sentence): readonly HardPlace[] => {
    const most = target.wordsPerSentence;
    const long: readonly HardPlace[] =
      most !== null && sentence.words.length > most
        ? [
            {
              offset: sentence.offset,
              text: sentence.text,
              why: { what: 'sentence', words: sentence.words.length, most },
            },
          ]
        : [];
    const words = hardWordsOf(sentence, target.band, isTrade).flatMap(
      ({ text, offset }): readonly HardPlace[] => {
        const plain = text.toLowerCase();
        if (seen.has(plain)) return [];
        seen.add(plain);
        return [{ offset, text, why: { what: 'word', syllables: syllablesOf(text) } }];
      },
    );
    return [...long, ...words];
  });
}

/**
 * How hard a text is to read, by published measures, for one band. A grade is a warning to the author and never a
 * verdict: no formula sees sense, order or interest.
 *
 * @param trade The trade's own words, small letters; they have a glossary and are not held against the text.
 */
export function readingReport(
  passages: readonly { readonly text: string; readonly offset: number }[],
  target: ReadingTarget,
  trade: ReadonlySet<string>,
): ReadingReport {
  const sentences = passages.flatMap(({ text, offset }) => sentencesOf(text, offset));
  const counts = countText(sentences);
  const isTooShort = counts.words < FEWEST_WORDS;
  const said = (name: Measure): number | null => (isTooShort ? null : measure(name, counts));
  // One entry for each measure.
  const measures = Object.fromEntries(MEASURES.map((name) => [name, said(name)])) as Record<
    Measure,
    number | null
  >;
  const grade = measures.fleschKincaidGrade;
  const isTrade = (word: string): boolean => trade.has(word) || trade.has(word.replace(/s$/, ''));
  const met = sentences
    .flatMap(({ words }) => words.map(({ text }) => text.toLowerCase()))
    .filter((word) => isTrade(word) && !familiarAtSeven(word));
  return {
    counts,
    measures,
    isTooShort,
    readAloud: !target.readsAlone,
    isWithinTarget: grade === null || target.gradeMost === null ? null : grade <= target.gradeMost,
    hard: hardPlaces(sentences, target, isTrade),
    tradeWords: [...new Set(met)].toSorted(),
  };
}
