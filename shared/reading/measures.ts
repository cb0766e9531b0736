import { automatedReadability } from 'automated-readability';
import { colemanLiau } from 'coleman-liau';
import { daleChallFormula } from 'dale-chall-formula';
import { flesch } from 'flesch';
import { fleschKincaid } from 'flesch-kincaid';
import { smogFormula } from 'smog-formula';
import { spacheFormula } from 'spache-formula';
import type { Counts } from './count.ts';

/** The published measures, each an American school grade but the first, on which higher is easier. */
export const MEASURES = [
  'fleschReadingEase',
  'fleschKincaidGrade',
  'daleChall',
  'spache1953',
  'spacheRevised',
  'colemanLiau',
  'automatedReadabilityIndex',
  'smog',
  'smogByHand',
  'linsearWrite',
] as const;
export type Measure = (typeof MEASURES)[number];

/** Nothing can be said of no words; a package's NaN never leaves here. */
const orNull = (value: number): number | null => (Number.isFinite(value) ? value : null);

/** Fewer sentences than this are outside the method of SMOG by hand. */
const SMOG_SENTENCES = 30;

/** The root of the square nearest to a count; halfway, of the smaller. @example rootOfNearestSquare(95) // 10 */
function rootOfNearestSquare(count: number): number {
  const root = Math.floor(Math.sqrt(count));
  return count - root ** 2 <= (root + 1) ** 2 - count ? root : root + 1;
}

const formulae: { readonly [M in Measure]: (counts: Counts) => number } = {
  // Flesch 1948.
  fleschReadingEase: ({ words, sentences, syllables }) =>
    flesch({ word: words, sentence: sentences, syllable: syllables }),
  // Kincaid, Fishburne, Rogers and Chissom 1975.
  fleschKincaidGrade: ({ words, sentences, syllables }) =>
    fleschKincaid({ word: words, sentence: sentences, syllable: syllables }),
  // Dale and Chall 1948 coefficients, with the word list of 1995.
  daleChall: ({ words, sentences, unfamiliarAtTen }) =>
    daleChallFormula({ word: words, sentence: sentences, difficultWord: unfamiliarAtTen }),
  // Spache 1953: words a sentence and unfamiliar words in a hundred, each unfamiliar word once.
  spache1953: ({ words, sentences, unfamiliarAtSeven }) =>
    0.141 * (words / sentences) + 0.086 * ((100 * unfamiliarAtSeven) / words) + 0.839,
  // Spache 1974: each unfamiliar word once.
  spacheRevised: ({ words, sentences, unfamiliarAtSeven }) =>
    spacheFormula({ word: words, sentence: sentences, unfamiliarWord: unfamiliarAtSeven }),
  // Coleman and Liau 1975, with 0.0588.
  colemanLiau: ({ words, sentences, letters }) =>
    colemanLiau({ word: words, sentence: sentences, letter: letters }),
  // Smith and Senter 1967; stops and commas are characters.
  automatedReadabilityIndex: ({ words, sentences, characters }) =>
    automatedReadability({ word: words, sentence: sentences, character: characters }),
  // McLaughlin 1969; made for thirty sentences or more.
  smog: ({ sentences, polysyllables }) =>
    smogFormula({ sentence: sentences, polysillabicWord: polysyllables }),
  // McLaughlin 1969, step 3 by hand: the root of the nearest square of the count in thirty sentences, plus 3.
  smogByHand: ({ sentences, polysyllables }) =>
    sentences < SMOG_SENTENCES
      ? Number.NaN
      : rootOfNearestSquare((polysyllables * SMOG_SENTENCES) / sentences) + 3,
  // Linsear Write: a point for a word of one or two syllables, three for a longer one; made for samples of 100 words.
  linsearWrite: ({ words, sentences, polysyllables }) => {
    const points = (words + 2 * polysyllables) / sentences;
    return points > 20 ? points / 2 : (points - 2) / 2;
  },
};

/** One measure of a text from its counts; null for a text without words. */
export const measure = (name: Measure, counts: Counts): number | null =>
  counts.words === 0 || counts.sentences === 0 ? null : orNull(formulae[name](counts));
