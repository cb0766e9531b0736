import { existsSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { afterAll, expect, test } from 'vitest';
import { home } from '../demo.ts';
import { newFolder, runPitlore } from './run-pitlore.ts';

const folder = newFolder();
afterAll(() => rmSync(folder, { recursive: true }));
const lesson = join(home, 'content/lessons/who-made-this.md');

test('pack writes one file, says how large it is, and the same lesson gives the same bytes', () => {
  const ran = runPitlore(['pack', lesson, '--out', 'a.html'], folder);
  expect(ran).toMatchObject({ code: 0, err: '' });
  const html = readFileSync(join(folder, 'a.html'), 'utf8');
  const kilobytes = Math.ceil(gzipSync(html).length / 1000);
  expect(ran.out).toContain(`wrote a.html: ${kilobytes} kB compressed`);
  expect(kilobytes).toBeLessThan(150);
  expect(runPitlore(['pack', lesson, '--out', 'b.html'], folder).code).toBe(0);
  expect(readFileSync(join(folder, 'b.html'), 'utf8')).toBe(html);
});

test('pack never writes over a file', () => {
  writeFileSync(join(folder, 'who-made-this.html'), 'mine');
  const { code, err } = runPitlore(['pack', lesson], folder);
  expect(code).toBe(1);
  expect(err).toContain('who-made-this.html is there already');
  expect(readFileSync(join(folder, 'who-made-this.html'), 'utf8')).toBe('mine');
});

test('a lesson with errors is told of and not packed', () => {
  writeFileSync(
    join(folder, 'broken.md'),
    '---\ntitle: Broken\nsite: nowhere\nbands: [7-9]\nminutes: 5\n---\nText.\n',
  );
  const { code, err } = runPitlore(['pack', 'broken.md'], folder);
  expect(code).toBe(1);
  expect(err).toContain('broken.md:3');
  expect(existsSync(join(folder, 'broken.html'))).toBe(false);
});

test('pack without a file is not understood', () => {
  expect(runPitlore(['pack'], folder).code).toBe(2);
});
