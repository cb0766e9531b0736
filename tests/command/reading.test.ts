import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { newFolder, runPitlore } from './run-pitlore.ts';

/** A text in a file of its own. */
function fileOf(text: string): string {
  const file = join(newFolder(), 'text.md');
  writeFileSync(file, text);
  return file;
}

/** 108 words in 18 sentences of six words of one syllable each. */
const PLAIN = `${'The men dug a deep pit. The stone was in the pit. '.repeat(9)}\n`;

test('counts and published measures come out as the formula gives them', () => {
  const { code, out, err } = runPitlore(['reading', fileOf(PLAIN), '--band', '7-9', '--json']);
  expect({ code, err }).toEqual({ code: 0, err: '' });
  const said = JSON.parse(out);
  expect(said).toMatchObject({ words: 108, sentences: 18, syllables: 108, isTooShort: false, hard: [] });
  // Kincaid and others 1975: 0.39 words a sentence + 11.8 syllables a word − 15.59.
  expect(said.measures.fleschKincaidGrade).toBeCloseTo(0.39 * (108 / 18) + 11.8 - 15.59, 9);
  // Flesch 1948: 206.835 − 1.015 words a sentence − 84.6 syllables a word.
  expect(said.measures.fleschReadingEase).toBeCloseTo(206.835 - 1.015 * (108 / 18) - 84.6, 9);
  expect(said.isWithinTarget).toBe(true);
});

test('a long sentence and a hard word are told with their line and column', () => {
  const long = `The men dug ${'and dug '.repeat(30)}the pit.`;
  const file = fileOf(`${PLAIN}\n${long} It was an extraordinary accumulation.\n`);
  const { code, out } = runPitlore(['reading', file, '--band', '5-7']);
  expect(code).toBe(0);
  expect(out).toContain(`${file}:3:1: `);
  expect(out).toMatch(/\d+ words in one sentence; at most \d+ here/);
  const word = long.length + ' It was an '.length + 1;
  expect(out).toContain(`${file}:3:${word}: extraordinary (`);
  expect(out).toContain('it sees no sense');
});

test('of too little no measure says anything', () => {
  const { code, out } = runPitlore(['reading', 'content/lessons/made-or-not.md', '--band', '5-7']);
  expect(code).toBe(0);
  expect(out).toContain('no measure says anything of so little');
  expect(out).toContain('ages 5-7: an adult reads this aloud');
  // A word of the trade is for the glossary and does not count as hard.
  expect(out).toContain('words of the trade, for the glossary: charcoal');
});

test('of a lesson, the prose and what pupils see of a block are read; its head and its keys are not', () => {
  const lesson = `---\ntitle: An astonishing accumulation\n---\n${PLAIN}\n\`\`\`sort\ntitle: Extraordinary\nextraneous: 1\n\`\`\`\n`;
  const { out } = runPitlore(['reading', fileOf(lesson), '--band', '7-9', '--json']);
  const said = JSON.parse(out);
  expect(said.words).toBe(109);
  expect(said.hard).toMatchObject([{ line: 7, column: 8, text: 'Extraordinary' }]);
});

test.each([
  [['reading']],
  [['reading', 'content/lessons/made-or-not.md']],
  [['reading', 'content/lessons/made-or-not.md', '--band', '6-8']],
  [['reading', 'not-here.md', '--band', '7-9']],
])('%j is not understood', (argv) => {
  const { code, out, err } = runPitlore(argv);
  expect({ code, out }).toEqual({ code: 2, out: '' });
  expect(err).toContain('reading');
});
