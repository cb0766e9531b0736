import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { readFramework } from '../../shared/library/index.ts';
import { readFrameworkWords } from '../../src/loaders/read-framework-words.ts';
import { demoLibrary } from '../demo.ts';
import { newFolder, runPitlore } from './run-pitlore.ts';

const FILE = 'content/curricula/us-c3.yaml';
const WHEN = ['--changed', '2026-11-29T08:00:00Z'];

/** A text in a file of its own. */
function fileOf(name: string, text: string): string {
  const file = join(newFolder(), name);
  writeFileSync(file, text);
  return file;
}

test('a framework goes to a package and back, and is the same', async () => {
  const to = runPitlore(['framework', FILE, ...WHEN]);
  expect({ code: to.code, err: to.err }).toEqual({ code: 0, err: '' });
  expect(JSON.parse(to.out).CFDocument.lastChangeDateTime).toBe('2026-11-29T08:00:00Z');
  const back = runPitlore(['framework', fileOf('c3.json', to.out)]);
  expect({ code: back.code, err: back.err }).toEqual({ code: 0, err: '' });
  const known = await readFrameworkWords('content', 'content');
  expect(readFramework('back.yaml', back.out, known).value).toEqual(
    demoLibrary.curricula.frameworks.find(({ id }) => id === 'us-c3'),
  );
});

test('without --changed the package is of today', () => {
  const before = Date.now();
  const { out } = runPitlore(['framework', FILE]);
  const changed = Date.parse(JSON.parse(out).CFDocument.lastChangeDateTime);
  expect(changed).toBeGreaterThan(before - 2000);
  expect(changed).toBeLessThanOrEqual(Date.now());
});

test('a bad package is told in words, line by line, and nothing is written', () => {
  const { out } = runPitlore(['framework', FILE, ...WHEN]);
  const file = fileOf(
    'bad.json',
    out.replace('"title": "C3', '"titel": "C3').replace(/"identifier": "[^"]+"/, '"identifier": "c3"'),
  );
  const bad = runPitlore(['framework', file]);
  expect({ code: bad.code, out: bad.out }).toEqual({ code: 1, out: '' });
  expect(bad.err).toContain(`${file}:3:`);
  expect(bad.err).toContain('a UUID such as');
  expect(bad.err).toContain('title');
});

test.each([
  { name: 'a framework file taken for a package', text: 'id: x\nname: X\n', told: 'CFDocument' },
  { name: 'half a file', text: '{"CFDocument": {"identifier": ', told: 'error' },
  { name: 'an empty file', text: '', told: 'CFDocument' },
])('$name is told', ({ text, told }) => {
  const { code, out, err } = runPitlore(['framework', fileOf('x.txt', text), '--from-case']);
  expect({ code, out }).toEqual({ code: 1, out: '' });
  expect(err).toContain(told);
});

test('a package taken for a framework file is told', () => {
  const { code, err } = runPitlore(['framework', fileOf('x.json', '{"CFDocument": {}}'), '--to-case']);
  expect(code).toBe(1);
  expect(err).toContain('CFDocument');
});

test.each([
  [['framework']],
  [['framework', FILE, FILE]],
  [['framework', FILE, '--to-case', '--from-case']],
  [['framework', FILE, '--changed', 'yesterday']],
  [['framework', 'not-here.yaml']],
])('%j is not understood', (argv) => {
  expect(runPitlore(argv)).toMatchObject({ code: 2, out: '' });
});
