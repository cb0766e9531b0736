import { describe, expect, test } from 'vitest';
import { site } from '../../shared/words/en/site.ts';
import type { Copy } from '../../src/offline/copy.ts';
import { countCopy } from '../../src/offline/count-copy.ts';
import { tellCopy } from '../../src/offline/tell-copy.ts';

const MADE = '2026-11-29T12:00:00.000Z';
const paths = [
  'index.html',
  ...['bench', 'day', 'outcomes', 'sources', 'help'].map((page) => `${page}/index.html`),
  ...['flint', 'bone'].flatMap((id) =>
    ['', 'teacher-notes/', 'pupil-sheet/', 'cards/', 'answers/', 'print-pack/', 'ages/7-9/'].map(
      (page) => `lessons/${id}/${page}index.html`,
    ),
  ),
  // A lesson with problems: its page tells them, and it has no papers.
  'lessons/broken/index.html',
];
const files = (urls: readonly string[]) => urls.map((url) => ({ url, size: 1000 }));

describe('what a copy holds is counted', () => {
  test('from its files: lessons that run, files and bytes', () => {
    expect(countCopy(files(paths), MADE)).toEqual({
      made: MADE,
      lessons: 2,
      files: paths.length,
      bytes: paths.length * 1000,
    });
  });

  test.each([
    'bench/index.html',
    'help/index.html',
    'lessons/bone/index.html',
    'lessons/flint/cards/index.html',
  ])('and is refused without %s, which the page says it holds', (absent) => {
    expect(() => countCopy(files(paths.filter((url) => url !== absent)), MADE)).toThrow(absent);
  });
});

describe('what a copy is said to be', () => {
  const kept: Copy = { made: MADE, lessons: 13, files: 272, bytes: 13_484_000 };
  const newer: Copy = { ...kept, made: '2026-12-01T12:00:00.000Z' };

  test('what it holds, its date and its size', () => {
    const told = tellCopy({ state: 'kept', kept, newer: null }, site);
    expect(told).toMatch(/13 lessons with their papers.* as made on 29 November 2026 at .* \(13 MB\)\.$/);
  });

  test('one lesson is not told as several', () => {
    expect(tellCopy({ state: 'kept', kept: { ...kept, lessons: 1 }, newer: null }, site)).toContain(
      '1 lesson with its papers',
    );
  });

  test('a newer one that waits, after the one in use', () => {
    expect(tellCopy({ state: 'kept', kept, newer }, site)).toMatch(
      /29 November 2026.*A newer copy, made on 1 December 2026.*every page of this site has been closed/,
    );
  });

  test.each(['keeping', 'none'] as const)('%s: no promise that it is ready', (state) => {
    const told = tellCopy({ state }, site);
    expect(told).not.toContain('Ready');
    expect(told).toContain('without a signal');
  });
});
