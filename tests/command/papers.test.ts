import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { home } from '../demo.ts';
import { newFolder, runPitlore } from './run-pitlore.ts';

const folder = newFolder();
afterAll(() => rmSync(folder, { recursive: true }));

/** No browser of this name: pages are written instead of PDF. Printing itself is held in tests/site/papers.spec.ts. */
const WITHOUT_BROWSER = { CHROMIUM_PATH: join(folder, 'no-such-browser') };
const lesson = join(folder, 'stone-to-axe.md');
writeFileSync(lesson, readFileSync(join(home, 'content/lessons/stone-to-axe.md')));

test('a lesson outside the content folder, and no browser: whole pages, and the truth about it', () => {
  const ran = runPitlore(['papers', lesson, '--out', 'out', '--large'], folder, WITHOUT_BROWSER);
  expect(ran.code).toBe(0);
  expect(ran.err).toContain(`CHROMIUM_PATH names ${WITHOUT_BROWSER.CHROMIUM_PATH}, which cannot be run`);
  const names = readdirSync(join(folder, 'out')).toSorted();
  expect(names).toContain('stone-to-axe-print-pack-large.html');
  expect(names).toContain('stone-to-axe-risk-assessment-large.html');
  for (const name of names) {
    const html = readFileSync(join(folder, 'out', name), 'utf8');
    expect(ran.out).toContain(`${name}: ${Buffer.byteLength(html)} bytes`);
    expect(html, name).toContain('Children never knap');
    // Large print was asked for, and nothing is asked of a network or another file.
    expect(html, name).toMatch(/<input[^>]* data-large[^>]* checked/);
    expect(html, name).not.toMatch(/<script|<link|(?:src|href)="(?!#)|url\((?!["']?(?:data:|#))/);
  }
});

test('papers never writes over a file, and then writes nothing', () => {
  mkdirSync(join(folder, 'taken'));
  writeFileSync(join(folder, 'taken/stone-to-axe-cards.html'), 'mine');
  const { code, err } = runPitlore(['papers', lesson, '--out', 'taken'], folder, WITHOUT_BROWSER);
  expect(code).toBe(1);
  expect(err).toContain('stone-to-axe-cards.html');
  expect(readdirSync(join(folder, 'taken'))).toEqual(['stone-to-axe-cards.html']);
  expect(readFileSync(join(folder, 'taken/stone-to-axe-cards.html'), 'utf8')).toBe('mine');
});

test('a lesson with errors is told of and not printed', () => {
  writeFileSync(
    join(folder, 'broken.md'),
    '---\ntitle: Broken\nsite: nowhere\nbands: [7-9]\nminutes: 5\n---\nText.\n',
  );
  const { code, out, err } = runPitlore(['papers', 'broken.md', '--out', 'broken'], folder);
  expect({ code, out }).toEqual({ code: 1, out: '' });
  expect(err).toContain('broken.md:3');
  expect(existsSync(join(folder, 'broken'))).toBe(false);
});

test('a program that is no browser is told of, and nothing is written', () => {
  const { code, err } = runPitlore(['papers', lesson, '--out', 'none'], folder, {
    CHROMIUM_PATH: process.execPath,
  });
  expect(code).toBe(2);
  expect(err).toContain('ended before it printed');
  expect(existsSync(join(folder, 'none'))).toBe(false);
});

test.each([
  [['papers']],
  [['papers', lesson]],
  [['papers', lesson, 'another.md', '--out', 'x']],
  [['papers', lesson, '--out', 'x', '--size', 'a3']],
])('%j is not understood', (argv) => {
  expect(runPitlore(argv, folder)).toMatchObject({ code: 2, out: '' });
});
