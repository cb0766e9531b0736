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
    expect(papers.length).toBeGreaterThanOrEqual(11);
    expect(papers).toContain(`/lessons/${lesson}/print-pack/`);
    for (const path of papers) {
      await page.goto(path);
      // One paper, or in the pack every part of it.
      const parts = await page.locator('.paper').all();
      expect(parts.length, path).toBeGreaterThan(path.endsWith('/print-pack/') ? 8 : 0);
      for (const part of parts) {
        const name = `${path}: ${await part.getAttribute('data-part')}`;
        await expect(part.locator('[data-caution]'), name).toBeVisible();
        await expect(part, name).toContainText(NEVER);
        expect(await part.locator('[data-caution]').innerText()).not.toMatch(/\.[A-Z]/);
      }
    }
  });
}
