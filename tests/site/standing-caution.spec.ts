import { readdirSync } from 'node:fs';
import { expect, ready, test } from './page-under-test.ts';

const NEVER = 'Children never knap, never swing an edged tool and never grind stone.';
const lessons = readdirSync('content/lessons')
  .filter((name) => name.endsWith('.md'))
  .map((name) => name.replace(/\.md$/, ''));

test('there are lessons to walk', () => expect(lessons.length).toBeGreaterThan(4));

for (const lesson of lessons) {
  // Every demo lesson shows or names flint, as tests/shared/compile/standing-hazards.test.ts holds.
  test(`${lesson}: the caution stands on its screen and on every paper`, async ({ watched: { page } }) => {
    await page.goto(`/lessons/${lesson}/`);
    await ready(page);
    await expect(page.locator('[data-caution]')).toBeVisible();
    expect(await page.locator('[data-caution]').innerText()).not.toMatch(/\.[A-Z]/);
    const papers = await page
      .locator('nav.papers a')
      .evaluateAll((links) => links.map((link) => link.getAttribute('href') ?? ''));
    expect(papers.length).toBeGreaterThanOrEqual(6);
    for (const path of papers) {
      await page.goto(path);
      // A print pack is many papers: each has its own.
      const sheets = await page.locator('.paper').all();
      expect(sheets.length, path).toBeGreaterThan(0);
      for (const sheet of sheets) {
        await expect(sheet.locator('[data-caution]'), path).toBeVisible();
        await expect(sheet, path).toContainText(NEVER);
        expect(await sheet.locator('[data-caution]').innerText()).not.toMatch(/\.[A-Z]/);
      }
    }
  });
}
