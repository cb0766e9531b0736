import { readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeEach, expect, test } from 'vitest';
import { SMALL_SITE, SMALL_TABLE } from '../shared/finds-in/small-site.ts';
import { newFolder, runPitlore } from './run-pitlore.ts';

const folder = newFolder();
afterAll(() => rmSync(folder, { recursive: true }));
const read = (name: string): string => readFileSync(join(folder, name), 'utf8');
const put = (name: string, text: string): void => writeFileSync(join(folder, name), text);

const LIST = `SF,Pit,Context,Object,Material,L (mm),W (mm),Th (mm),State,Period
2,P2,201,core,flint,64,55,43,,
3,P2,201,flake,flint,31,20,5,,
7,P2,201,flake,flint,40,30,8,whole,Late Neolithic
8,P5,506,flake,flint,41,30,8,whole,Late Neolithic
9,P2,201,Zzyzx,flint,40,30,8,whole,Late Neolithic
`;
const NEW_ROW = '7,P2,201,flake,flint,whole,flaked,waste-from-knapping,late-neolithic,evidence,40,30,8,';

beforeEach(() => {
  put('gravel-end.yaml', SMALL_SITE);
  put('gravel-end.finds.csv', SMALL_TABLE);
  put('list.csv', LIST);
});

test('finds --into says what it would do, line by line, and writes nothing', () => {
  const { code, out, err } = runPitlore(['finds', 'list.csv', '--into', 'gravel-end.yaml'], folder);
  expect({ code, err }).toEqual({ code: 0, err: '' });
  expect(out).toContain(
    'Into Gravel End: 1 new find, 1 there already, the same, 0 put in the record of one there, 3 waiting for an answer, 0 left out',
  );
  expect(out).toContain('list.csv:2  it is there already, the same: P2-2');
  expect(out).toContain(
    'list.csv:3  number-there\n  Find P2-3 is there already and differs: length in mm 30 there, 31 here.',
  );
  expect(out).toContain(
    'list.csv:5  place-not-there\n  The site has no pit "P5", where the row puts context 506.',
  );
  expect(out).toContain(`would write gravel-end.finds.csv:\n  + ${NEW_ROW}\n`);
  expect(out).toMatch(/nothing was written; add --write to write it\n$/);
  expect([read('gravel-end.yaml'), read('gravel-end.finds.csv')]).toEqual([SMALL_SITE, SMALL_TABLE]);
});

test('with --write it is done, and done again it changes nothing', () => {
  const argv = ['finds', 'list.csv', '--into', 'gravel-end.yaml', '--write'];
  expect(runPitlore(argv, folder)).toMatchObject({ code: 0, err: '' });
  expect(read('gravel-end.finds.csv')).toBe(`${SMALL_TABLE}${NEW_ROW}\n`);
  expect(read('gravel-end.yaml')).toBe(SMALL_SITE);
  const again = runPitlore(argv, folder);
  expect(again.code).toBe(0);
  expect(again.out).toContain('nothing of the list is new to the site; nothing was written');
  expect(read('gravel-end.finds.csv')).toBe(`${SMALL_TABLE}${NEW_ROW}\n`);
  expect(readdirSync(folder).toSorted()).toEqual(['gravel-end.finds.csv', 'gravel-end.yaml', 'list.csv']);
});

test('places are made and records replaced where the options say so, and the site checks clean', () => {
  const options = ['--new-places', '--same-number', 'replace', '--write'];
  const { code, out } = runPitlore(['finds', 'list.csv', '--into', 'gravel-end.yaml', ...options], folder);
  expect(code).toBe(0);
  expect(out).toContain('list.csv:3  put in the record of P2-3');
  expect(out).toContain('fill 506 in P5 is made, with stand-ins');
  expect(out).toContain('  - 3,P2,201,flake,flint,broken,');
  expect(read('gravel-end.finds.csv')).toContain('late-neolithic,evidence,31,20,5,\n');
  expect(read('gravel-end.yaml')).toContain('  # STAND-INS, made for a finds list');
  expect(runPitlore(['check', 'gravel-end.yaml'], folder)).toMatchObject({ code: 0 });
});

test('--json tells the same as data', () => {
  const { out } = runPitlore(['finds', 'list.csv', '--into', 'gravel-end.yaml', '--json'], folder);
  expect(JSON.parse(out)).toMatchObject({
    site: 'gravel-end',
    counts: { fresh: 1, same: 1, replaced: 0, waiting: 3, leftOut: 0 },
    files: [{ path: 'gravel-end.finds.csv', isNew: false }],
    written: false,
  });
});

test('a site with errors is not written to', () => {
  put('gravel-end.finds.csv', `${SMALL_TABLE}4,P9,201,flake,flint,,,,,,1,1,1,\n`);
  const { code, err } = runPitlore(['finds', 'list.csv', '--into', 'gravel-end.yaml', '--write'], folder);
  expect(code).toBe(1);
  expect(err).toContain('gravel-end.yaml: expected a site without errors');
});

test.each([
  { argv: ['--into', 'gravel-end.yaml', '--out', 'sites'], says: 'expected no --out and no --site' },
  { argv: ['--write'], says: 'belong to --into SITE.yaml' },
])('finds $argv is not understood, and says why', ({ argv, says }) => {
  const { code, err } = runPitlore(['finds', 'list.csv', ...argv], folder);
  expect(code).toBe(2);
  expect(err).toContain(says);
});
