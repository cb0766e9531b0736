import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { newFolder, runPitlore } from './run-pitlore.ts';

const LESSON = 'content/lessons/hours-in-an-axe.md';

test('notes writes plain Markdown: sections, answers, sources, and no HTML', () => {
  const { code, out, err } = runPitlore(['notes', LESSON]);
  expect({ code, err }).toEqual({ code: 0, err: '' });
  expect(out).toMatch(/^# The hours in an axe\n/);
  for (const title of ['Before, during, after', 'What to bring, and who', 'Safety in short', 'To talk about'])
    expect(out).toContain(`\n## ${title}\n`);
  expect(out).not.toMatch(/<\w/);
});

test('--band tells the words as that band is told them', () => {
  const younger = runPitlore(['notes', LESSON, '--band', '7-9']).out;
  const older = runPitlore(['notes', LESSON, '--band', '9-11']).out;
  expect(younger).toContain('A hole that people dug long ago.');
  expect(older).not.toContain('A hole that people dug long ago.');
  expect(older).toContain('ages 9–11');
});

test('a band that the lesson is not for is refused, with those it is for', () => {
  const { code, err } = runPitlore(['notes', LESSON, '--band', '4-5']);
  expect(code).toBe(2);
  expect(err).toContain('expected a band of this lesson (7-9, 9-11); received "4-5"');
});

test('--out writes a file, and never over one that is there', () => {
  const out = join(newFolder(), 'notes.md');
  expect(runPitlore(['notes', LESSON, '--out', out]).code).toBe(0);
  expect(readFileSync(out, 'utf8')).toBe(runPitlore(['notes', LESSON]).out);
  writeFileSync(out, 'mine');
  expect(runPitlore(['notes', LESSON, '--out', out]).code).toBe(1);
  expect(readFileSync(out, 'utf8')).toBe('mine');
});

test('a lesson with an error gives its problems and no notes', () => {
  const { code, out, err } = runPitlore(['notes', 'tests/content/broken/find-unknown.md']);
  expect({ code, out }).toEqual({ code: 1, out: '' });
  expect(err).toContain('find-unknown');
});
