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
  await expect(page.locator('[data-outcome]')).toHaveCount(all.length);
  const ids = await page.locator('[id]').evaluateAll((elements) => elements.map(({ id }) => id));
  expect(new Set(ids).size).toBe(ids.length);
  const bare = await page
    .locator('[data-outcome] td:nth-child(2)')
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
      .locator('main a, main select, main button, footer a')
      .evaluateAll((links) => links.filter((link) => link.getBoundingClientRect().height < 43.5).length);
    expect(small, size.name).toBe(0);
    const { violations } = await new AxeBuilder({ page }).analyze();
    expect(violations.map(({ id, nodes }) => `${size.name}: ${id}: ${nodes[0]?.html ?? ''}`)).toEqual([]);
  }
});

test('the list is narrowed by framework, age, subject and activity, by keyboard', async ({
  watched: { page },
}) => {
  await page.goto('/outcomes/');
  const all = demoLibrary.curricula.frameworks.flatMap(({ outcomes }) => outcomes).length;
  const shown = page.locator('[data-outcome]:visible');
  const told = page.getByRole('status');
  await expect(told).toContainText(`Shown: ${all} of ${all}.`);
  await page.getByRole('combobox', { name: 'Framework' }).focus();
  await page.keyboard.type('National curriculum in England');
  await expect(page.locator('main section:visible')).toHaveCount(1);
  const england = await shown.count();
  await page.keyboard.press('Tab');
  await page.keyboard.type('ages 7');
  await page.keyboard.press('Tab');
  await page.keyboard.type('Science');
  await page.keyboard.press('Tab');
  await page.keyboard.type('Sort');
  const left = await shown.count();
  expect(left).toBeGreaterThan(0);
  expect(left).toBeLessThan(england);
  await expect(told).toHaveText(
    new RegExp(
      `^National curriculum in England, ages 7–9, Science, Sort\\. Shown: ${left} of ${all}\\. Met here: \\d+\\.$`,
    ),
  );
  // Exactly those that the record says: of a stage met at 7 to 9, a science, shown by a sort.
  const { frameworks, steps } = demoLibrary.curricula;
  const stages = steps
    .filter(({ band }) => band === '7-9')
    .flatMap(({ stages: held }) => held['en-nc'] ?? []);
  const expected = (frameworks.find(({ id }) => id === 'en-nc')?.outcomes ?? []).filter(
    ({ stage, subject, evidence }) =>
      stages.includes(stage) && subject === 'science' && evidence.some(({ kind }) => kind === 'sort'),
  );
  expect(await shown.locator('code').allTextContents()).toEqual(expected.map(({ id }) => id));
  await expect(page.locator('[data-leads-to]:visible')).toHaveCount(1);
  // The address says the same to whoever is sent it.
  const sent = page.url();
  expect(sent).toContain('framework=en-nc');
  await page.goto('/');
  await page.goto(sent);
  await expect(shown).toHaveCount(left);
  const { violations } = await new AxeBuilder({ page }).analyze();
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html ?? ''}`)).toEqual([]);
  await page.getByRole('button', { name: 'Show all' }).press('Enter');
  await expect(shown).toHaveCount(all);
  expect(new URL(page.url()).search).toBe('');
});

test('an address with a choice nobody offers shows the whole list', async ({ watched: { page } }) => {
  await page.goto('/outcomes/?age=6-8&kind=%3Cb%3E');
  const all = demoLibrary.curricula.frameworks.flatMap(({ outcomes }) => outcomes).length;
  await expect(page.locator('[data-outcome]:visible')).toHaveCount(all);
});

test('what is narrowed prints on few pages, and says what it is', async ({ watched: { page } }) => {
  await page.goto('/outcomes/?framework=en-nc&age=7-9&subject=history');
  await expect(page.getByRole('status')).toContainText('ages 7–9, History');
  const pages = async (): Promise<number> =>
    (await page.pdf({ preferCSSPageSize: true })).toString('latin1').match(/\/Type\s*\/Page\b/g)?.length ?? 0;
  expect(await pages()).toBeLessThanOrEqual(3);
  await page.goto('/outcomes/');
  expect(await pages()).toBeLessThanOrEqual(30);
});

test('without script the whole list is there, and no choice that does nothing', async ({
  browser,
  baseURL,
}) => {
  const context = await browser.newContext({
    javaScriptEnabled: false,
    ...(baseURL === undefined ? {} : { baseURL }),
  });
  const page = await context.newPage();
  await page.goto('/outcomes/');
  const all = demoLibrary.curricula.frameworks.flatMap(({ outcomes }) => outcomes).length;
  await expect(page.locator('[data-outcome]:visible')).toHaveCount(all);
  await expect(page.locator('select:visible')).toHaveCount(0);
  await context.close();
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
