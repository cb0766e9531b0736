import { existsSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { newFolder, runPitlore } from './run-pitlore.ts';

test('new writes a commented lesson that checks clean', () => {
  const folder = newFolder();
  expect(runPitlore(['new', 'Six', 'pits'], folder)).toMatchObject({ code: 0, err: '' });
  const text = readFileSync(join(folder, 'six-pits.md'), 'utf8');
  expect(text).toContain('title: "Six pits"');
  expect(text.match(/# /g)?.length ?? 0).toBeGreaterThan(6);
  expect(runPitlore(['check', 'six-pits.md'], folder)).toMatchObject({
    code: 0,
    out: '1 file checked: 0 errors, 0 cautions\n',
  });
  rmSync(folder, { recursive: true });
});

test.each([['Who "made" this?'], ['Éclats: # & more']])('a lesson called %s checks clean too', (name) => {
  const folder = newFolder();
  const { code, out } = runPitlore(['new', name], folder);
  expect(code).toBe(0);
  const file = /^wrote (.+\.md)\. /.exec(out)?.[1] ?? '';
  expect(runPitlore(['check', file], folder)).toMatchObject({ code: 0 });
  rmSync(folder, { recursive: true });
});

test('new never writes over a file', () => {
  const folder = newFolder();
  writeFileSync(join(folder, 'six-pits.md'), 'mine');
  const { code, err } = runPitlore(['new', 'six-pits'], folder);
  expect(code).toBe(1);
  expect(err).toContain('six-pits.md is there already');
  expect(readFileSync(join(folder, 'six-pits.md'), 'utf8')).toBe('mine');
  rmSync(folder, { recursive: true });
});

test('new without a name writes nothing', () => {
  const folder = newFolder();
  expect(runPitlore(['new'], folder).code).toBe(2);
  expect(runPitlore(['new', '!!!'], folder).code).toBe(2);
  expect(existsSync(join(folder, '.md'))).toBe(false);
  rmSync(folder, { recursive: true });
});

test('help names every verb', () => {
  const { code, out, err } = runPitlore([]);
  expect({ code, err }).toEqual({ code: 0, err: '' });
  for (const verb of ['check', 'compile', 'score', 'new']) expect(out).toContain(`pitlore ${verb} `);
  expect(runPitlore(['help']).out).toBe(out);
});

test('a verb that is not known is told with the nearest, and exits 2', () => {
  const { code, out, err } = runPitlore(['chekc']);
  expect({ code, out }).toEqual({ code: 2, out: '' });
  expect(err).toContain('Did you mean check?');
  expect(runPitlore(['constructor']).code).toBe(2);
});
