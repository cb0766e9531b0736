import { describe, expect, test } from 'vitest';
import {
  countText,
  measure,
  sentencesOf,
  syllablesOf,
  type Counts,
  type Measure,
} from '../../shared/reading/index.ts';

const none: Counts = {
  words: 0,
  sentences: 0,
  syllables: 0,
  letters: 0,
  characters: 0,
  polysyllables: 0,
  unfamiliarAtTen: 0,
  unfamiliarAtSeven: 0,
};
const five = { words: 5, sentences: 1, syllables: 7, letters: 24, characters: 25 };

// Expected values are those printed by the textstat test suite, or worked by hand from the published coefficients.
const rows: readonly (readonly [title: string, name: Measure, counts: Partial<Counts>, expected: number])[] =
  [
    ['Flesch 1948, five words (textstat tests: 83.32)', 'fleschReadingEase', five, 83.32],
    ['Kincaid 1975, five words (textstat tests: 2.88)', 'fleschKincaidGrade', five, 2.88],
    [
      'Flesch 1948, 15 words a sentence, 1.5 syllables a word: 64.71',
      'fleschReadingEase',
      { words: 150, sentences: 10, syllables: 225 },
      64.71,
    ],
    [
      'Flesch 1948, above 100 is allowed: 206.835 − 6.09 − 84.6',
      'fleschReadingEase',
      { words: 6, sentences: 1, syllables: 6 },
      116.145,
    ],
    ['Smith and Senter 1967, stop counted (textstat tests: 4.62)', 'automatedReadabilityIndex', five, 4.62],
    ['Coleman and Liau 1975, coefficient 0.0588', 'colemanLiau', five, 6.504],
    [
      'McLaughlin 1969, one sentence (textstat tests: 8.842)',
      'smog',
      { words: 5, sentences: 1, polysyllables: 1 },
      8.841846,
    ],
    [
      'McLaughlin 1969, thirty sentences',
      'smog',
      { words: 600, sentences: 30, polysyllables: 95 },
      13.295007,
    ],
    [
      'Dale and Chall 1948, 4 in 100, no addition',
      'daleChall',
      { words: 100, sentences: 10, unfamiliarAtTen: 4 },
      1.1276,
    ],
    ['Spache 1974, 9 in 100', 'spacheRevised', { words: 100, sentences: 12, unfamiliarAtSeven: 9 }, 2.405333],
  ];

describe('readability from counts', () => {
  test.each(rows)('%s', (_, name, counts, expected) => {
    expect(measure(name, { ...none, ...counts })).toBeCloseTo(expected, 5);
  });

  test('no words give no measure, where some packages say 0', () => {
    expect(measure('fleschReadingEase', none)).toBeNull();
  });
});

describe('readability from text', () => {
  // The five-word line of the textstat test suite.
  const counts = countText(sentencesOf('Cool dogs wear da sunglasses.', 0));

  test('the line of the textstat tests is counted as printed there', () => {
    expect(counts).toMatchObject(five);
  });

  test.each([
    ['antler', 2],
    ['microlith', 3],
    ['Neolithic', 4],
    ['flint', 1],
  ])('%s has %i syllables', (word, expected) => {
    expect(syllablesOf(word)).toBe(expected);
  });

  test('a short form, a decimal and a heading are told from the end of a sentence', () => {
    expect(sentencesOf('It was made c. 3000 BC. It is 4.5 cm long.', 0).map(({ text }) => text)).toEqual([
      'It was made c. 3000 BC.',
      'It is 4.5 cm long.',
    ]);
    expect(sentencesOf('A heading without a stop', 0)).toHaveLength(1);
  });
});
