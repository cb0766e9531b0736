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
  'spacheRevised',
  'colemanLiau',
  'automatedReadabilityIndex',
  'smog',
] as const;
export type Measure = (typeof MEASURES)[number];

/** Nothing can be said of no words; a package's NaN never leaves here. */
const orNull = (value: number): number | null => (Number.isFinite(value) ? value : null);

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
};

/** One measure of a text from its counts; null for a text without words. */
export const measure = (name: Measure, counts: Counts): number | null =>
  counts.words === 0 || counts.sentences === 0 ? null : orNull(formulae[name](counts));
