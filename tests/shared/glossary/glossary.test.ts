import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { define, wordsUsed } from '../../../shared/glossary/index.ts';
import { readGlossary } from '../../../shared/library/index.ts';
import { familiarAtTen } from '../../../shared/reading/familiar.ts';
import { readingReport } from '../../../shared/reading/index.ts';
import { demoLibrary, home } from '../../demo.ts';

const { glossary, vocabulary, bands, sources } = demoLibrary;
const text = readFileSync(join(home, 'content/glossary.yaml'), 'utf8');
const ids = sources.map(({ id }) => id);
const told = (...texts: string[]): readonly string[] => wordsUsed(glossary, texts).map(({ word }) => word);

describe('the words a text uses', () => {
  test.each([
    { text: 'A pit with flint in it.', words: ['flint', 'pit'] },
    { text: 'FLINTS, from pits', words: ['flint', 'pit'] },
    { text: 'flinty pitted hidebound', words: [] },
    { text: 'An antler pick lay in\nits fill', words: ['antler', 'antler pick', 'fill'] },
    { text: 'They soon filled it up.', words: [] },
  ])('$text', ({ text: given, words }) => {
    expect(told(given)).toEqual(words);
  });

  test('a shape that counts only alone is a tray’s name, not a word in a sentence', () => {
    expect(told('They sat on hard ground.')).toEqual([]);
    expect(told('flaked', 'Ground')).toEqual(['flaked', 'ground']);
  });

  test('come in the order in which they are met', () => {
    expect(told('then the socket', 'an axe of flint')).toEqual(['socket', 'axe head', 'flint']);
  });
});

describe('the glossary of the product', () => {
  const younger = glossary.map(({ word, younger: said }) => ({ word, said }));

  test('has fifty words or more, each with two meanings and a source there is', () => {
    expect(glossary.length).toBeGreaterThanOrEqual(50);
    expect(glossary.filter(({ source }) => !ids.includes(source))).toEqual([]);
    expect(glossary.filter((word) => define(word, '5-7') === define(word, '9-11'))).toEqual([]);
  });

  test('is read by nine-year-olds: no sentence over the limit of 7 to 9, no hard word that is not told', () => {
    const most = bands.find(({ band }) => band === '7-9')?.wordsPerSentence ?? 0;
    expect(most).toBe(12);
    const target = { band: '7-9', readsAlone: true, gradeMost: null, wordsPerSentence: most } as const;
    const trade = new Set(
      glossary.flatMap(({ word, forms }) =>
        [word, ...forms].flatMap((shape) => shape.toLowerCase().split(' ')),
      ),
    );
    const hard = younger.flatMap(({ word, said }) =>
      readingReport([{ text: said, offset: 0 }], target, trade).hard.map((place) => `${word}: ${place.text}`),
    );
    expect(hard).toEqual([]);
  });

  test('covers every word finds are named by that a ten-year-old may not know', () => {
    const labels = [...vocabulary.objectTypes, ...vocabulary.materials].map(({ label }) => label);
    const untold = labels.filter((label) => {
      const strange = label.split(/[^\p{L}]+/u).filter((word) => word !== '' && !familiarAtTen(word));
      return strange.length > 0 && told(label).length === 0;
    });
    // Nuts, and things of our own time.
    expect(untold).toEqual(['hazelnut shells', 'plastic tag', 'burnt nutshell', 'plastic']);
  });

  test('may be read by itself, and says nothing is wrong', () => {
    expect(readGlossary('glossary.yaml', text, ids).problems).toEqual([]);
  });
});

describe('what is wrong in a glossary', () => {
  const first = (given: string) => readGlossary('glossary.yaml', given, ids).problems[0];

  test('is told at its place: a shape that two rows have', () => {
    const given = text.replace('forms: [trenches]', 'forms: [pits]');
    const line = given.split('\n').findIndex((row) => row.includes('word: pit,')) + 1;
    expect(first(given)).toMatchObject({ code: 'key-repeated', from: { line } });
  });

  test('is told at its place: a source that is not there, with the nearest', () => {
    const given = text.replace('source: trade-words', 'source: trade-word');
    expect(first(given)).toMatchObject({
      code: 'source-unknown',
      from: { line: 7, column: 9 },
      edit: { text: 'trade-words' },
    });
  });

  test('is told at its place: a key misspelt', () => {
    expect(first(text.replace('older: "Someone', 'oldr: "Someone'))).toMatchObject({
      code: 'key-unknown',
      edit: { text: 'older' },
    });
  });
});
