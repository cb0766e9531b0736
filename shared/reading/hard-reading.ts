import type { Band } from '../library/bands.ts';
import { countText, syllablesOf } from './count.ts';
import { measure } from './measures.ts';
import { FEWEST_WORDS, hardWordsOf, type ReadingTarget } from './reading-report.ts';
import { sentencesOf, type Sentence } from './sentences.ts';

/** Why a sentence is pointed at: it is long for the band, or the hardest of a text whose grade is above the band's. */
export type HardWhy =
  | { readonly what: 'sentence'; readonly words: number; readonly most: number }
  | { readonly what: 'grade'; readonly grade: number; readonly most: number; readonly words: number };

/** A sentence that a band's target says is hard. */
export interface HardReading {
  readonly from: number;
  readonly to: number;
  readonly why: HardWhy;
  /** The youngest band it is hard for. */
  readonly band: Band;
  /** Its pupils read by themselves; else an adult reads to them. */
  readonly readsAlone: boolean;
  /** Words of it that could be shorter ones. */
  readonly hardWords: readonly string[];
  /** Sentences of the same text that are as long and not told of; 0 but at the last that is told. */
  readonly more: number;
}

/** So many long sentences are told one by one: more would hide what else is said of the file. ASM. */
const MOST_TOLD = 8;

/** The grade is taken over so many words from the start: far more than any formula asks for. ASM. */
const MOST_WORDS = 3000;

/** A title or the name of a card is no sentence to a formula. */
const isSentence = ({ text }: Sentence): boolean => /[.!?…]["'”’)]*$/u.test(text);

/** The sentences that make up the first so many words. */
function firstWords(sentences: readonly Sentence[], most: number): readonly Sentence[] {
  let words = 0;
  return sentences.filter((sentence) => {
    words += sentence.words.length;
    return words <= most;
  });
}

/** Syllables a word over the words that are not of the trade: those are taught, and count as the rest of the text does. */
function syllablesPerWord(sentences: readonly Sentence[], isTrade: (word: string) => boolean): number {
  let [words, syllables] = [0, 0];
  for (const { text } of sentences.flatMap((sentence) => sentence.words)) {
    if (isTrade(text.toLowerCase())) continue;
    words += 1;
    syllables += syllablesOf(text);
  }
  return words === 0 ? 1 : syllables / words;
}

/** The Flesch–Kincaid grade of a text, the trade's words left out of its syllables; null of too little. */
function gradeOf(sentences: readonly Sentence[], isTrade: (word: string) => boolean): number | null {
  const counts = countText(sentences);
  const syllables = syllablesPerWord(sentences, isTrade) * counts.words;
  return counts.words < FEWEST_WORDS ? null : measure('fleschKincaidGrade', { ...counts, syllables });
}

/** Where a sentence stands, from its first word to the end of its last. */
function placeOf({ words, offset }: Sentence): { readonly from: number; readonly to: number } {
  const last = words.at(-1);
  return { from: offset, to: last === undefined ? offset : last.offset + last.text.length };
}

/**
 * The sentences of a text that are hard for some band: each that is longer than the band's longest, and, where the
 * whole is above the band's grade, the hardest one. A formula counts; it sees no meaning.
 *
 * @param targets One for each band, the youngest first.
 * @param trade The trade's own words, small letters: taught in a glossary, and not held against a text.
 */
export function hardReading(
  passages: readonly { readonly text: string; readonly offset: number }[],
  targets: readonly ReadingTarget[],
  trade: ReadonlySet<string>,
): readonly HardReading[] {
  const sentences = passages.flatMap(({ text, offset }) => sentencesOf(text, offset));
  const isTrade = (word: string): boolean => trade.has(word) || trade.has(word.replace(/s$/, ''));
  const found = (
    sentence: Sentence,
    { band, readsAlone }: ReadingTarget,
    why: HardWhy,
    more = 0,
  ): HardReading => ({
    ...placeOf(sentence),
    why,
    band,
    readsAlone,
    hardWords: hardWordsOf(sentence, band, isTrade).map(({ text }) => text),
    more,
  });
  const long = sentences.flatMap((sentence) => {
    const words = sentence.words.length;
    const target = targets.find(({ wordsPerSentence }) => words > (wordsPerSentence ?? words));
    return target === undefined ? [] : [{ sentence, target, words }];
  });
  const told = long.slice(0, MOST_TOLD).map(({ sentence, target, words }, index) => {
    const more = index === MOST_TOLD - 1 ? long.length - MOST_TOLD : 0;
    return found(sentence, target, { what: 'sentence', words, most: target.wordsPerSentence ?? words }, more);
  });
  const whole = firstWords(sentences.filter(isSentence), MOST_WORDS);
  const grade = gradeOf(whole, isTrade);
  const over = targets.find(({ gradeMost }) => grade !== null && gradeMost !== null && grade > gradeMost);
  if (grade === null || over?.gradeMost === undefined || over.gradeMost === null) return told;
  const weight = (sentence: Sentence): number =>
    0.39 * sentence.words.length + 11.8 * syllablesPerWord([sentence], isTrade);
  const hardest = whole.toSorted((a, b) => weight(b) - weight(a))[0];
  if (hardest === undefined) return told;
  const words = whole.reduce((sum, sentence) => sum + sentence.words.length, 0);
  return [...told, found(hardest, over, { what: 'grade', grade, most: over.gradeMost, words })];
}
