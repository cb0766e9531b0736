import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import {
  countText,
  measure,
  MEASURES,
  sentencesOf,
  syllablesOf,
  type Counts,
  type Measure,
} from '../../shared/reading/index.ts';

interface Case {
  readonly id: string;
  readonly measure: Measure;
  readonly counts: Partial<Counts>;
  readonly expected: number | null;
  readonly tolerance: number;
  readonly source: string;
}

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
const five = { words: 5, sentences: 1, syllables: 7, letters: 24, characters: 25, polysyllables: 1 };

// The shape is this file's own; a case without a field fails its test.
const cases = parse(readFileSync('tests/reference/readability.yaml', 'utf8')) as readonly Case[];

describe('readability from counts', () => {
  test('there are fourteen published cases, and every measure has one', () => {
    expect(cases.length).toBe(14);
    expect([...new Set(cases.map((row) => row.measure))].toSorted()).toEqual([...MEASURES].toSorted());
  });

  test.each(cases)('$id ($source)', ({ measure: name, counts, expected, tolerance }) => {
    const value = measure(name, { ...none, ...counts });
    if (expected === null || value === null) expect(value).toBe(expected);
    else expect(Math.abs(value - expected)).toBeLessThanOrEqual(tolerance);
  });

  test('SMOG by hand says nothing of fewer than thirty sentences', () => {
    expect(measure('smogByHand', { ...none, words: 580, sentences: 29, polysyllables: 95 })).toBeNull();
  });

  test('Linsear Write halves what is above twenty points a sentence, and takes two off below', () => {
    // By its rule: 100 words, 4 sentences, 10 long: (90 + 30)/4 = 30, halved; 10 sentences: 12, less 2, halved.
    const hundred = { ...none, words: 100, polysyllables: 10 };
    expect(measure('linsearWrite', { ...hundred, sentences: 4 })).toBe(15);
    expect(measure('linsearWrite', { ...hundred, sentences: 10 })).toBe(5);
  });
});

describe('readability from text', () => {
  // The five-word line of the textstat test suite.
  const counts = countText(sentencesOf('Cool dogs wear da sunglasses.', 0));

  test('the line of the textstat tests is counted as printed there', () => {
    expect(counts).toMatchObject(five);
  });

  test.each(cases.filter(({ id }) => id.endsWith('five-words') || id === 'linsear-short'))(
    '$id from the line itself',
    ({ measure: name, expected, tolerance }) => {
      expect(Math.abs((measure(name, counts) ?? 0) - (expected ?? 0))).toBeLessThanOrEqual(tolerance);
    },
  );

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
