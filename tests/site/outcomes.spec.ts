import { AxeBuilder } from '@axe-core/playwright';
import { demoLibrary } from '../demo.ts';
import { expect, ready, SIZES, test } from './page-under-test.ts';

test('the foot of every page leads to the outcomes, and each is there with how it is known', async ({
  watched: { page },
}) => {
  await page.goto('/');
  await page.getByRole('contentinfo').getByRole('link', { name: 'Outcomes' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Outcomes');
  const all = demoLibrary.curricula.frameworks.flatMap(({ outcomes }) => outcomes);
  await expect(page.locator('table.outcomes tbody tr')).toHaveCount(all.length);
  const ids = await page.locator('[id]').evaluateAll((elements) => elements.map(({ id }) => id));
  expect(new Set(ids).size).toBe(ids.length);
  const bare = await page
    .locator('table.outcomes tbody tr td:nth-child(2)')
    .evaluateAll((cells) => cells.filter((cell) => (cell.textContent ?? '').trim().length < 12).length);
  expect(bare).toBe(0);
});

test('an outcome leads to a lesson that has earned it', async ({ watched: { page } }) => {
  await page.goto('/outcomes/#en-nc-en-sc-ks1-classify');
  const row = page.locator('#en-nc-en-sc-ks1-classify');
  await expect(row).toBeInViewport();
  await row.getByRole('link', { name: /Made or not made\? \(practised\)/ }).press('Enter');
  await expect(page).toHaveURL(/\/lessons\/made-or-not\/$/);
});

test('outcomes fit every screen, with no accessibility finding, and targets are 44 px', async ({
  watched: { page },
}) => {
  for (const size of SIZES) {
    await page.setViewportSize({ width: size.width, height: size.height });
    await page.goto('/outcomes/');
    const over = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    expect(over, size.name).toBeLessThanOrEqual(0);
    const small = await page
      .locator('main a, footer a')
      .evaluateAll((links) => links.filter((link) => link.getBoundingClientRect().height < 43.5).length);
    expect(small, size.name).toBe(0);
    const { violations } = await new AxeBuilder({ page }).analyze();
    expect(violations.map(({ id, nodes }) => `${size.name}: ${id}: ${nodes[0]?.html ?? ''}`)).toEqual([]);
  }
});

test('a lesson tells catalogues what it is, and the page’s policy lets it be', async ({
  watched: { page },
}) => {
  // A breach of the policy is an event as well as a line on the console, which fails the test by itself.
  await page.addInitScript(() => {
    document.addEventListener('securitypolicyviolation', (breach) => {
      console.error(`policy: ${breach.violatedDirective} ${breach.blockedURI}`);
    });
  });
  await page.goto('/lessons/who-made-this/');
  await ready(page);
  const texts = await page.locator('script[type="application/ld+json"]').allTextContents();
  expect(texts.length).toBe(1);
  const data = JSON.parse(texts[0] ?? '');
  expect(data).toMatchObject({
    '@context': 'https://schema.org',
    name: 'Who made this?',
    typicalAgeRange: '7-10',
  });
  expect(data.teaches.length).toBeGreaterThan(3);
});

test('a lesson’s papers and other pages carry none', async ({ watched: { page } }) => {
  for (const path of ['/', '/lessons/who-made-this/teacher-notes/', '/outcomes/']) {
    await page.goto(path);
    await expect(page.locator('script[type="application/ld+json"]')).toHaveCount(0);
  }
});
