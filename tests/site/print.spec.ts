import { execFileSync } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import { expect, test } from './page-under-test.ts';

const PAPERS = ['teacher-notes', 'cards', 'pupil-sheet', 'answers'] as const;
const FOLDER = 'test-results/papers';

for (const format of ['A4', 'Letter'] as const) {
  test(`every paper prints on ${format} with its foot and every find`, async ({ watched: { page } }) => {
    mkdirSync(FOLDER, { recursive: true });
    for (const paper of PAPERS) {
      await page.goto(`/lessons/who-made-this/${paper}/`);
      const file = `${FOLDER}/${paper}-${format}.pdf`;
      writeFileSync(file, await page.pdf({ format, tagged: true, outline: true, printBackground: true }));
      const text = execFileSync('pdftotext', ['-layout', file, '-'], { encoding: 'utf8' });
      const pages = text.split('\f').filter((sheet) => sheet.trim() !== '');
      for (const [index, sheet] of pages.entries()) {
        expect(sheet, `${paper}, page ${index + 1}`).toContain(`${index + 1} of ${pages.length}`);
        expect(sheet).toContain('Who made this? ·');
      }
      for (const number of [165, 166, 168, 171, 173, 174, 175, 176, 177, 178])
        expect(text, paper).toContain(String(number));
      expect(text).not.toContain('Skip to the lesson');
    }
  });
}
