import { execFileSync } from 'node:child_process';
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { expect, ready, test } from './page-under-test.ts';

const NEVER = 'Children never knap, never swing an edged tool and never grind stone.';
const lessons = readdirSync('content/lessons')
  .filter((name) => name.endsWith('.md'))
  .map((name) => name.replace(/\.md$/, ''));

test('there are lessons to walk', () => expect(lessons.length).toBeGreaterThan(4));

for (const lesson of lessons) {
  // Every demo lesson shows or names flint, as tests/shared/compile/lesson-situation.test.ts holds.
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
      await expect(page.locator('.paper [data-caution]'), path).toBeVisible();
      await expect(page.locator('.paper'), path).toContainText(NEVER);
      expect(await page.locator('[data-caution]').innerText()).not.toMatch(/\.[A-Z]/);
    }
  });

  test(`${lesson}: both safety papers say first what comes before them`, async ({ watched: { page } }) => {
    for (const path of ['safety', 'risk-assessment']) {
      await page.goto(`/lessons/${lesson}/${path}/`);
      const first = page.locator('.paper > :nth-child(2)');
      await expect(first).toContainText('Local law and your employer’s policy come first.');
      await expect(page.locator('.paper')).toContainText(
        'Pitlore lists hazards that visits like this one commonly bring',
      );
      await expect(page.locator('.paper')).not.toContainText(/\bis safe\b/);
    }
  });
}

test('the draft says it is one; what only the site knows is blank', async ({ watched: { page } }) => {
  await page.goto('/lessons/who-made-this/risk-assessment/');
  await expect(page.locator('.paper > :nth-child(2)')).toContainText(
    'Draft: not valid until a named responsible person completes and signs it.',
  );
  const hazards = page.locator('[data-hazard]');
  expect(await hazards.count()).toBeGreaterThan(9);
  for (const hazard of await hazards.all()) await expect(hazard.locator('.blanks > div')).toHaveCount(7);
  await expect(page.locator('[data-own]')).toHaveCount(5);
  await expect(page.locator('input, textarea, select')).toHaveCount(0);
});

test('the draft comes down as a table', async ({ watched: { page } }) => {
  await page.goto('/lessons/who-made-this/risk-assessment/');
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('link', { name: 'The draft as a table' }).click(),
  ]);
  const lines = readFileSync(await download.path(), 'utf8').split('\r\n');
  expect(lines[0]).toContain('Local law and your employer’s policy come first.');
  expect(lines[1]).toContain('Draft: not valid until');
  expect(lines[5]).toMatch(/^What could hurt someone,"Who, and how",.+,By whom,By when,/);
  expect(lines[6]).toMatch(/^Sharp flint and other edges in the hand,[^]+,,,,,,,$/);
});

for (const format of ['A4', 'Letter'] as const) {
  test(`safety papers print on ${format} with their foot`, async ({ watched: { page } }) => {
    mkdirSync('test-results/papers', { recursive: true });
    for (const paper of ['safety', 'risk-assessment']) {
      await page.goto(`/lessons/who-made-this/${paper}/`);
      const file = `test-results/papers/${paper}-${format}.pdf`;
      writeFileSync(file, await page.pdf({ format, tagged: true, printBackground: true }));
      const text = execFileSync('pdftotext', ['-layout', file, '-'], { encoding: 'utf8' });
      const pages = text.split('\f').filter((sheet) => sheet.trim() !== '');
      for (const [index, sheet] of pages.entries())
        expect(sheet, paper).toContain(`${index + 1} of ${pages.length}`);
      expect(text, paper).toContain('Sharp flint and other edges in the hand');
      expect(text, paper).toContain('NSPCC Learning');
    }
  });
}
