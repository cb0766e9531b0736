import { cpSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { home } from '../demo.ts';
import { newFolder, runPitlore } from './run-pitlore.ts';

const folder = newFolder();
afterAll(() => rmSync(folder, { recursive: true }));
const asked = ['draft', 'wendle-marsh', '--bands', '7-9,9-11', '--minutes', '45'];

test('draft writes a lesson that checks clean, and says why', () => {
  const { code, out, err } = runPitlore(
    [...asked, '--seed', '5', '--pin', 'P7-165', '--out', 'draft.md'],
    folder,
  );
  expect({ code, err }).toEqual({ code: 0, err: '' });
  expect(out).toMatch(/^wrote draft\.md\. /);
  expect(out).toMatch(
    /balance of the trays \d\.\d\d \(weight 0\.30\): trays of [\d, and]+: \d\.\d\d of \d\.\d\d bits/,
  );
  expect(readFileSync(join(folder, 'draft.md'), 'utf8')).toContain('P7-165');
  expect(runPitlore(['check', 'draft.md'], folder)).toMatchObject({
    code: 0,
    out: '1 file checked: 0 errors, 0 cautions\n',
  });
  const again = runPitlore([...asked, '--out', 'draft.md'], folder);
  expect(again.code).toBe(1);
  expect(again.err).toContain('draft.md is there already');
});

test('without a file the lesson goes to the screen; a seed gives it again, another gives another', () => {
  const [first, same, other] = ['5', '5', '6'].map((seed) => runPitlore([...asked, '--seed', seed], folder));
  expect(first?.code).toBe(0);
  expect(first?.out).toMatch(/^---\ntitle: /);
  expect(same?.out).toBe(first?.out);
  expect(other?.out).not.toBe(first?.out);
});

test('draft --json tells the same as data', () => {
  const { code, out } = runPitlore([...asked, '--json', '--kinds', 'sort,order'], folder);
  expect(code).toBe(0);
  const { activities, reasons, merit } = JSON.parse(out) as {
    activities: { kind: string }[];
    reasons: string[];
    merit: number;
  };
  expect(activities.every(({ kind }) => kind === 'sort' || kind === 'order')).toBe(true);
  expect(reasons.length).toBeGreaterThan(5);
  expect(merit).toBeGreaterThan(0.5);
});

test('a list becomes a site, and the site a lesson, in two commands', () => {
  const content = join(folder, 'content');
  for (const name of ['vocabulary.yaml', 'bands.yaml', 'sources.yaml']) {
    cpSync(join(home, 'content', name), join(content, name), { recursive: true });
  }
  const list = join(home, 'tests/content/finds-in/finds-as-they-come.csv');
  expect(runPitlore(['finds', list, '--out', join(content, 'sites')], folder).code).toBe(0);
  const drafted = runPitlore(
    ['draft', 'finds-as-they-come', '--bands', '7-9', '--minutes', '40', '--content', content],
    folder,
  );
  expect(drafted.code).toBe(0);
  expect(drafted.out).toContain('site: finds-as-they-come');
});

test.each([
  { argv: ['draft'], said: 'draft needs a site' },
  { argv: ['draft', 'wendle-mash', '--bands', '7-9', '--minutes', '40'], said: 'Did you mean wendle-marsh?' },
  { argv: ['draft', 'wendle-marsh', '--bands', '7-8', '--minutes', '40'], said: 'expected a band' },
  { argv: ['draft', 'wendle-marsh', '--bands', '7-9', '--minutes', 'forty'], said: 'expected whole minutes' },
  {
    argv: ['draft', 'wendle-marsh', '--bands', '7-9', '--minutes', '40', '--kinds', 'sorting'],
    said: 'expected a kind',
  },
])('$argv is not understood, and it is said why', ({ argv, said }) => {
  const { code, err } = runPitlore(argv, folder);
  expect(code).toBe(2);
  expect(err).toContain(said);
});

test('in too little time nothing is drafted, and it is said why', () => {
  const { code, err, out } = runPitlore(
    ['draft', 'wendle-marsh', '--bands', '7-9', '--minutes', '5'],
    folder,
  );
  expect({ code, out }).toEqual({ code: 1, out: '' });
  expect(err).toContain('minutes leave no time for an activity');
});
