import { cpSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { demoLessons, home } from '../demo.ts';
import { newFolder, runPitlore } from './run-pitlore.ts';

const broken = (name: string): string => `tests/content/broken/${name}`;

test('check of every demo lesson says so, and exits 0', () => {
  const ran = runPitlore(['check', ...demoLessons.map(({ file }) => file)]);
  expect(ran).toEqual({
    code: 0,
    out: `${demoLessons.length} files checked: 0 errors, 0 cautions\n`,
    err: '',
  });
});

test('a day file is checked as a day, wherever it lies', () => {
  const days = ['content/days/class-morning.yaml', 'content/days/open-day.yaml'];
  expect(runPitlore(['check', ...days])).toEqual({
    code: 0,
    out: '2 files checked: 0 errors, 0 cautions\n',
    err: '',
  });
  const file = join(newFolder(), 'ours.yaml');
  writeFileSync(file, readFileSync('content/days/open-day.yaml', 'utf8').replace('groups:', 'grups:'));
  const { code, out } = runPitlore(['check', file]);
  expect(code).toBe(1);
  expect(out).toMatch(/ours\.yaml:\d+:1: error: expected one of .*\(write "groups"\)/);
});

test('an error is told as file:line:column, with its line and a caret, and exits 1', () => {
  const file = broken('tray-unknown.md');
  const { code, out, err } = runPitlore(['check', file]);
  expect(code).toBe(1);
  expect(err).toBe('');
  const [first, line, caret, sum] = out.split('\n');
  expect(first).toMatch(
    /^tests\/content\/broken\/tray-unknown\.md:13:17: error: expected .+ \(write "ground"\)$/,
  );
  expect(line).toBe(' 13 | trays: [carved, grond, fired, not made]');
  expect(caret).toBe('    |                 ^^^^^');
  expect(sum).toBe('1 file checked: 1 error, 0 cautions');
});

test('a caution is told, and exits 0', () => {
  const { code, out } = runPitlore(['check', broken('tray-empty.md')]);
  expect(code).toBe(0);
  expect(out).toContain('caution');
});

test('one file with an error among several that are clean exits 1', () => {
  const { code, out } = runPitlore(['check', 'content/lessons/how-old.md', broken('row-ragged.csv')]);
  expect(code).toBe(1);
  expect(out).toContain('2 files checked: 1 error, 0 cautions');
});

test('a finds table and a site file are checked as what they are', () => {
  expect(
    runPitlore(['check', 'content/sites/wendle-marsh.finds.csv', 'content/sites/wendle-marsh.yaml']),
  ).toMatchObject({
    code: 0,
    out: '2 files checked: 0 errors, 0 cautions\n',
  });
  expect(runPitlore(['check', broken('cell-unreadable.csv')]).code).toBe(1);
});

test('--json writes an array of file, line, column, level, code, message and mend, and nothing else', () => {
  const file = broken('tray-unknown.md');
  const { code, out, err } = runPitlore(['check', file, broken('tray-empty.md'), '--json']);
  expect(code).toBe(1);
  expect(err).toBe('');
  const rows = JSON.parse(out) as Record<string, unknown>[];
  expect(rows.map((row) => Object.keys(row))).toEqual([
    ['file', 'line', 'column', 'level', 'code', 'message', 'mend'],
    ['file', 'line', 'column', 'level', 'code', 'message', 'mend'],
  ]);
  expect(rows[0]).toMatchObject({
    file,
    line: 13,
    column: 17,
    level: 'error',
    code: 'tray-unknown',
    mend: 'write "ground"',
  });
  expect(rows[1]).toMatchObject({ level: 'caution', code: 'tray-empty' });
});

test('--json of clean files is an empty array', () => {
  expect(runPitlore(['check', 'content/lessons/how-old.md', '--json'])).toMatchObject({
    code: 0,
    out: '[]\n',
  });
});

test('no file, a file that is not there, an option that is not known: 2, and the reason on the other stream', () => {
  for (const argv of [
    ['check'],
    ['check', 'no-such-file.md'],
    ['check', '--loudly', 'content/lessons/how-old.md'],
  ]) {
    const { code, out, err } = runPitlore(argv);
    expect({ argv, code, out }).toEqual({ argv, code: 2, out: '' });
    expect(err).not.toBe('');
    expect(err).not.toContain('    at ');
  }
});

test('a lesson in a folder of one’s own is held against that folder’s site', () => {
  const folder = newFolder();
  cpSync(join(home, 'content'), folder, { recursive: true });
  const site = readFileSync(join(folder, 'sites/wendle-marsh.yaml'), 'utf8');
  writeFileSync(join(folder, 'sites/mill-field.yaml'), site.replace('id: wendle-marsh', 'id: mill-field'));
  cpSync(join(folder, 'sites/wendle-marsh.finds.csv'), join(folder, 'sites/mill-field.finds.csv'));
  mkdirSync(join(folder, 'lessons/autumn'));
  const lesson = readFileSync(join(folder, 'lessons/how-old.md'), 'utf8').replace(
    'site: wendle-marsh',
    'site: mill-field',
  );
  writeFileSync(join(folder, 'lessons/autumn/mill.md'), lesson);
  expect(runPitlore(['check', 'lessons/autumn/mill.md'], folder)).toMatchObject({ code: 0 });
  // Away from its folder the same lesson finds only the demo content, unless the folder is named.
  const elsewhere = newFolder();
  writeFileSync(join(elsewhere, 'mill.md'), lesson);
  const lost = runPitlore(['check', 'mill.md', '--json'], elsewhere);
  expect((JSON.parse(lost.out) as { code: string }[]).map(({ code }) => code)).toEqual(['site-unknown']);
  expect(runPitlore(['check', 'mill.md', '--content', folder], elsewhere)).toMatchObject({ code: 0 });
  // A finds table that is broken is what a lesson without its site is told first.
  writeFileSync(join(folder, 'sites/mill-field.yaml'), 'id: mill-field\n');
  const told = JSON.parse(runPitlore(['check', 'lessons/autumn/mill.md', '--json'], folder).out) as {
    code: string;
    file: string;
  }[];
  expect(told[0]).toMatchObject({ code: 'key-missing' });
  expect(told[0]?.file).toContain('mill-field.yaml');
  for (const used of [folder, elsewhere]) rmSync(used, { recursive: true });
});
