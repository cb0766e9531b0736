import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { home } from '../demo.ts';
import { newFolder, runPitlore } from './run-pitlore.ts';

const folder = newFolder();
afterAll(() => rmSync(folder, { recursive: true }));
const list = join(home, 'tests/content/finds-in/finds-as-they-come.csv');

test('finds says what is guessed and what is asked, at row:column', () => {
  const { code, out, err } = runPitlore(['finds', list], folder);
  expect({ code, err }).toEqual({ code: 0, err: '' });
  expect(out).toContain('44 rows: 11 finds, 31 with questions (4 wait for an answer), 2 left out');
  expect(out).toContain(
    `${list}:6:7  other-unit\n  "4.6 cm" has a unit of its own in a column of mm. What is the length in mm?\n  choose   46 mm | it was in mm: 4.6 mm\n  meanwhile "46"`,
  );
  expect(out).toContain(`${list}:45  a row of totals is no find`);
  expect(out).toContain('who made it: 40 finds');
});

test('finds writes a site that checks clean of errors, and never over one', () => {
  const { code, out } = runPitlore(['finds', list, '--out', 'sites'], folder);
  expect(code).toBe(0);
  expect(out).toContain(
    'wrote sites/finds-as-they-come.yaml and sites/finds-as-they-come.finds.csv: 38 finds.',
  );
  expect(readFileSync(join(folder, 'sites/finds-as-they-come.yaml'), 'utf8')).toContain('STAND-INS');
  expect(
    runPitlore(['check', 'sites/finds-as-they-come.yaml', 'sites/finds-as-they-come.finds.csv'], folder),
  ).toMatchObject({ code: 0 });
  const again = runPitlore(['finds', list, '--out', 'sites'], folder);
  expect(again.code).toBe(1);
  expect(again.err).toContain('finds-as-they-come.yaml is there already');
});

test('finds --json tells the same as data', () => {
  const { code, out } = runPitlore(['finds', list, '--json'], folder);
  expect(code).toBe(0);
  const { counts, rows, questions } = JSON.parse(out) as {
    counts: unknown;
    rows: readonly unknown[];
    questions: readonly unknown[];
  };
  expect(counts).toEqual({ rows: 44, found: 11, asked: 31, waiting: 4, leftOut: 2 });
  expect([rows.length, questions.length]).toEqual([44, 41]);
});

test('a list in the code page of an older spreadsheet is read', () => {
  writeFileSync(
    join(folder, 'alt.csv'),
    Buffer.from(
      'Fundnr;Befund;Objekt;Länge (mm);Breite (mm);Stärke (mm)\r\n1;12;Abschlag;52;38;9\r\n',
      'latin1',
    ),
  );
  const { code, out } = runPitlore(['finds', 'alt.csv'], folder);
  expect(code).toBe(0);
  expect(out).toMatch(/^read as windows-1252\nalt\.csv: 1 row: 1 find, 0 with questions/);
});

test('the contexts of a site that is known tell the pits', () => {
  writeFileSync(
    join(folder, 'more.csv'),
    'sf,context,object,length,width,thickness\n201,1702,flake,40,30,8\n',
  );
  expect(runPitlore(['finds', 'more.csv', '--site', 'wendle-marsh'], folder).out).toContain('P7: 1702\n');
  expect(runPitlore(['finds', 'more.csv', '--site', 'wendle-mash'], folder)).toMatchObject({ code: 2 });
});

test('finds without a file says what it needs', () => {
  expect(runPitlore(['finds'], folder)).toMatchObject({ code: 2 });
});
