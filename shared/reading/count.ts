import { syllable } from 'syllable';
import { familiarAtSeven, familiarAtTen } from './familiar.ts';
import type { Sentence } from './sentences.ts';

/** What readability formulae are made of. */
export interface Counts {
  readonly words: number;
  readonly sentences: number;
  readonly syllables: number;
  /** Letters and digits. */
  readonly letters: number;
  /** All that is printed, stops and commas included, spaces not. */
  readonly characters: number;
  /** Words of three syllables or more. */
  readonly polysyllables: number;
  /** Words, each time they stand, that are not on the list of Chall and Dale. */
  readonly unfamiliarAtTen: number;
  /** Different words that are not on the list of Spache. */
  readonly unfamiliarAtSeven: number;
}

/** Letters looked at: nobody writes a longer word, and the patterns of the package take long over thousands. */
const LONGEST_WORD = 60;

const MOST_KEPT = 20_000;
const kept = new Map<string, number>();

/** Syllables of a word; a numeral counts as one. A word is counted once and kept. @example syllablesOf('Neolithic') // 4 */
export function syllablesOf(written: string): number {
  const before = kept.get(written);
  if (before !== undefined) return before;
  if (kept.size >= MOST_KEPT) kept.clear();
  const counted = countSyllables(written.slice(0, LONGEST_WORD));
  kept.set(written, counted);
  return counted;
}

function countSyllables(word: string): number {
  if (/^\p{N}/u.test(word)) return 1;
  const counted = Math.max(1, syllable(word));
  // The package counts "glasses" as "glass"; after ss or zz, -es is a syllable of its own.
  const isHissed = /(?:ss|zz)es$/i.test(word);
  return isHissed && counted === syllable(word.replace(/es$/i, '')) ? counted + 1 : counted;
}

const sum = (numbers: readonly number[]): number => numbers.reduce((total, number) => total + number, 0);

/** Counts a text cut into sentences. Names are familiar to nobody and hard for nobody: they are left out of the unfamiliar. */
export function countText(sentences: readonly Sentence[]): Counts {
  const words = sentences.flatMap((sentence) => sentence.words);
  const syllables = words.map(({ text }) => syllablesOf(text));
  const common = words.filter(({ isName }) => !isName).map(({ text }) => text);
  return {
    words: words.length,
    sentences: sentences.length,
    syllables: sum(syllables),
    letters: sum(words.map(({ text }) => text.replaceAll(/[^\p{L}\p{N}]/gu, '').length)),
    characters: sum(sentences.map(({ text }) => text.replaceAll(/\s/g, '').length)),
    polysyllables: syllables.filter((count) => count >= 3).length,
    unfamiliarAtTen: common.filter((word) => !familiarAtTen(word)).length,
    unfamiliarAtSeven: new Set(
      common.filter((word) => !familiarAtSeven(word)).map((word) => word.toLowerCase()),
    ).size,
  };
}
