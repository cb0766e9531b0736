import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from '@playwright/test';
import { newFolder, runPitlore } from '../command/run-pitlore.ts';
import { footOf, pdfPages } from './pdf-text.ts';

// Printing from the command line needs a browser, so it is held here; the rest of the verb in tests/command/papers.test.ts.
test('pitlore papers prints a lesson that lies anywhere, and says truly what it wrote', () => {
  test.setTimeout(240_000);
  const folder = newFolder();
  const lesson = join(folder, 'my-own.md');
  writeFileSync(lesson, readFileSync('content/lessons/stone-to-axe.md'));
  const chromium = process.env['CHROMIUM_PATH'] ?? '/usr/bin/chromium';
  const argv = ['papers', lesson, '--out', 'out', '--size', 'letter'];
  const { code, out, err } = runPitlore(argv, folder, { CHROMIUM_PATH: chromium });
  expect({ code, err }).toEqual({ code: 0, err: '' });
  const told = [...out.matchAll(/^wrote (.+): (\d+) pages?, (\d+) bytes$/gm)];
  expect(told.length).toBeGreaterThan(9);
  expect(told[0]?.[1]).toBe(join('out', 'my-own-print-pack-letter.pdf'));
  const counted = new Map<string, number>();
  for (const [, name = '', pages, bytes] of told) {
    const file = join(folder, name);
    const read = pdfPages(file);
    expect(read.length, name).toBe(Number(pages));
    expect(readFileSync(file).length).toBe(Number(bytes));
    for (const { width, height } of read) {
      expect(Math.abs(Math.min(width, height) - 612)).toBeLessThan(2);
      expect(Math.abs(Math.max(width, height) - 792)).toBeLessThan(2);
    }
    counted.set(name.replace(/^.*my-own-(.+)-letter\.pdf$/, '$1'), read.length);
  }
  // The pack knows how many sheets each part has, and its contents say so.
  const pack = pdfPages(join(folder, told[0]?.[1] ?? ''));
  const feet = pack.map(footOf);
  const cards = counted.get('cards') ?? 0;
  expect(feet.filter((foot) => foot.includes('Cards to cut out · sheet'))).toHaveLength(cards);
  expect(feet.some((foot) => foot.includes(`Cards to cut out · sheet ${cards} of ${cards}`))).toBe(true);
  expect(pack[0]?.lines.map(({ text }) => text)).toContain('Sheets');
  rmSync(folder, { recursive: true });
});
