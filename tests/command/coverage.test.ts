import { copyFileSync, mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { demoLibrary, home } from '../demo.ts';
import { newFolder, runPitlore } from './run-pitlore.ts';

interface Framework {
  readonly framework: string;
  readonly outcomes: readonly {
    readonly outcome: string;
    readonly lessons: readonly { readonly lesson: string; readonly grade: string }[];
  }[];
  readonly gaps: readonly { readonly outcome: string; readonly status: string }[];
}

/** A folder that holds some demo lessons and nothing else. */
function folderOf(...names: readonly string[]): string {
  const folder = join(newFolder(), 'lessons');
  mkdirSync(folder);
  for (const name of names)
    copyFileSync(join(home, 'content/lessons', `${name}.md`), join(folder, `${name}.md`));
  return folder;
}

test('every open outcome of every framework is met by a lesson or told as a gap, once', () => {
  const { code, out, err } = runPitlore(['coverage', 'content/lessons', '--json']);
  expect({ code, err }).toEqual({ code: 0, err: '' });
  const told: readonly Framework[] = JSON.parse(out);
  const { frameworks } = demoLibrary.curricula;
  expect(told.map(({ framework }) => framework)).toEqual(frameworks.map(({ id }) => id));
  for (const [index, { outcomes, gaps }] of told.entries()) {
    const open = (frameworks[index]?.outcomes ?? []).filter(({ never }) => never === null);
    const rows = [...outcomes, ...gaps].map(({ outcome }) => outcome);
    expect(rows.toSorted()).toEqual(open.map(({ id }) => id).toSorted());
    expect(outcomes.every(({ lessons }) => lessons.length > 0)).toBe(true);
    expect(gaps.every(({ status }) => status !== '')).toBe(true);
  }
});

test('only the lessons of the folder count', () => {
  const { code, out } = runPitlore(['coverage', folderOf('made-or-not'), '--framework', 'en-nc', '--json']);
  expect(code).toBe(0);
  const [england]: readonly Framework[] = JSON.parse(out);
  expect(england?.outcomes.map(({ outcome }) => outcome)).toEqual([
    'en-hi-ks1-find-out',
    'en-sc-ks1-classify',
  ]);
  for (const { lessons } of england?.outcomes ?? [])
    expect(lessons).toEqual([{ lesson: 'made-or-not', grade: 'practised' }]);
});

test('in words: how many of how many, who meets each, and what is left', () => {
  const { code, out } = runPitlore(['coverage', folderOf('made-or-not')]);
  expect(code).toBe(0);
  const open = demoLibrary.curricula.frameworks.find(({ id }) => id === 'en-nc')?.outcomes ?? [];
  expect(out).toContain(`National curriculum in England: 2 of ${open.length} outcomes\n`);
  expect(out).toContain('  en-sc-ks1-classify  made-or-not (practised)\n');
  expect(out).toContain('  not met: ');
  // A framework none of them meets is told only when it is asked for.
  expect(out).not.toContain('Next Generation');
  expect(runPitlore(['coverage', folderOf('made-or-not'), '--framework', 'us-ngss']).out).toContain('0 of ');
});

test('a lesson with errors meets nothing, and the code says so', () => {
  const folder = folderOf('made-or-not');
  writeFileSync(join(folder, 'broken.md'), '---\ntitle: No site\n---\n');
  expect(runPitlore(['coverage', folder]).code).toBe(1);
});

test('an empty folder is told', () => {
  const { code, out } = runPitlore(['coverage', folderOf()]);
  expect(code).toBe(0);
  expect(out).toContain('no lesson files in ');
});

test('a framework misspelt is told with the nearest known one', () => {
  const { code, out, err } = runPitlore(['coverage', 'content/lessons', '--framework', 'en-nk']);
  expect({ code, out }).toEqual({ code: 2, out: '' });
  expect(err).toContain('"en-nk". Did you mean en-nc?');
});

test.each([[['coverage']], [['coverage', 'not-a-folder']], [['coverage', 'content/lessons', '--loud']]])(
  '%j is not understood',
  (argv) => {
    expect(runPitlore(argv)).toMatchObject({ code: 2, out: '' });
  },
);
