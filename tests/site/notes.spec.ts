import { execFileSync } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import { expect, test } from './page-under-test.ts';

const LESSONS = ['who-made-this', 'round-the-fire', 'same-list'] as const;
const FOLDER = 'test-results/notes';

for (const lesson of LESSONS) {
  test(`the notes of ${lesson} and the file beside them have the same sections`, async ({
    watched: { page },
  }) => {
    await page.goto(`/lessons/${lesson}/teacher-notes/`);
    const onPage = await page.locator('.notes-section h2').allInnerTexts();
    expect(onPage.length).toBeGreaterThan(10);
    const path = await page.locator('.notes-download').getAttribute('href');
    const file = await page.request.get(path ?? '');
    expect(file.headers()['content-type']).toContain('text/markdown');
    const headings = [...(await file.text()).matchAll(/^## (.+)$/gm)].map(([, words]) => words ?? '');
    const flat = (words: string): string => words.replaceAll(/[\s–\\]+/g, ' ').trim();
    expect(headings.map(flat)).toEqual(onPage.map(flat));
  });

  for (const format of ['A4', 'Letter'] as const) {
    test(`the notes of ${lesson} print on ${format}: a foot on each page, no heading at its end`, async ({
      watched: { page },
    }) => {
      mkdirSync(FOLDER, { recursive: true });
      await page.goto(`/lessons/${lesson}/teacher-notes/`);
      await page.evaluate(() => document.fonts.ready);
      const headings = await page.locator('.notes-section :is(h2, h3)').allInnerTexts();
      const plain = (words: string): string => words.replaceAll(/\s+/g, ' ').trim();
      const known = new Set(headings.map(plain));
      expect(known.size).toBeGreaterThan(10);
      const file = `${FOLDER}/${lesson}-${format}.pdf`;
      writeFileSync(file, await page.pdf({ format, tagged: true, printBackground: true }));
      const pages = execFileSync('pdftotext', ['-layout', file, '-'], { encoding: 'utf8' })
        .split('\f')
        .filter((sheet) => sheet.trim() !== '');
      expect(pages.length).toBeLessThanOrEqual(9);
      for (const [index, sheet] of pages.entries()) {
        const lines = sheet
          .split('\n')
          .map(plain)
          .filter((line) => line !== '');
        expect(lines.at(-1)).toContain(`${index + 1} of ${pages.length}`);
        expect(known.has(lines.at(-2) ?? ''), `page ${index + 1} ends with ${lines.at(-2) ?? ''}`).toBe(
          false,
        );
      }
    });
  }
}

test('words used here open by keyboard, and say what they mean', async ({ watched: { page } }) => {
  await page.goto('/lessons/who-made-this/');
  const words = page.locator('.lesson-words').first();
  await expect(words.locator('dd').first()).toBeHidden();
  await words.locator('summary').focus();
  await page.keyboard.press('Enter');
  await expect(words.getByText('A hole that people dug long ago.')).toBeVisible();
});

test('a pupil who reads alone has the words on the sheet; where an adult reads there are none', async ({
  watched: { page },
}) => {
  await page.goto('/lessons/who-made-this/pupil-sheet/');
  await expect(page.locator('.sheet-words dt').first()).toBeVisible();
  await page.goto('/lessons/made-or-not/pupil-sheet/');
  await expect(page.locator('.sheet-words')).toHaveCount(0);
});
