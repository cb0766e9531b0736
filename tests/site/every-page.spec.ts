import { readdirSync } from 'node:fs';
import { AxeBuilder } from '@axe-core/playwright';
import { expect, ready, SIZES, test } from './page-under-test.ts';

/** Every page of the built site, by its path. */
const pages = readdirSync('dist', { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('index.html') || file === '404.html')
  .map((file) => `/${file.replace(/index\.html$/, '')}`)
  // A print pack is the papers of its lesson once more, and slow to walk: one stands for all.
  .filter((path) => !path.endsWith('/print-pack/') || path.includes('/order-of-an-axe/'))
  .toSorted();

test('the site has its pages', () => {
  expect(pages).toEqual(
    expect.arrayContaining(['/', '/sources/', '/help/', '/lessons/made-or-not/teacher-notes/']),
  );
});

/** Lessons repeat the same pages: of one they are looked into at every size, of the others at one size each, in turn. */
const MODEL = '/lessons/who-made-this/';

const sizesFor = (path: string, index: number): readonly string[] =>
  !path.startsWith('/lessons/') || path.startsWith(MODEL)
    ? SIZES.map(({ name }) => name)
    : SIZES.slice(index % SIZES.length, (index % SIZES.length) + 1).map(({ name }) => name);

for (const [index, path] of pages.entries()) {
  test(`${path} has no accessibility finding, no stranger, and fits its screens`, async ({
    watched: { page },
  }) => {
    // No script of ours asks how wide the screen is: one load is laid out anew for each.
    await page.goto(path);
    await ready(page);
    for (const size of SIZES) {
      await page.setViewportSize({ width: size.width, height: size.height });
      const overflow = await page.evaluate(
        () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
      );
      expect(overflow, `${size.name}: nothing wider than the screen`).toBeLessThanOrEqual(0);
      if (!sizesFor(path, index).includes(size.name)) continue;
      const { violations } = await new AxeBuilder({ page }).analyze();
      expect(violations.map(({ id, nodes }) => `${size.name}: ${id}: ${nodes[0]?.html ?? ''}`)).toEqual([]);
    }
  });
}

test('dark, high contrast and forced colours have no accessibility finding', async ({
  watched: { page },
}) => {
  for (const media of [{ colorScheme: 'dark' }, { contrast: 'more' }, { forcedColors: 'active' }] as const) {
    await page.emulateMedia(media);
    await page.goto('/lessons/who-made-this/');
    await ready(page);
    await page.locator('.sort-ground [data-find]').first().click();
    const { violations } = await new AxeBuilder({ page }).analyze();
    expect(
      violations.map(({ id, nodes }) => `${JSON.stringify(media)}: ${id}: ${nodes[0]?.html ?? ''}`),
    ).toEqual([]);
  }
});

test('everything that can be pressed on a phone is at least 44 px', async ({ watched: { page } }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await page.goto('/lessons/who-made-this/');
  await ready(page);
  await page.locator('.sort-ground [data-find]').first().click();
  const small = await page.locator('button, [role="button"], main a, summary').evaluateAll((elements) =>
    elements
      .filter((element) => element.closest('p, .rod, .title-block') === null)
      .map((element) => ({ box: element.getBoundingClientRect(), html: element.outerHTML.slice(0, 90) }))
      .filter(({ box }) => box.width > 0 && (box.height < 43.5 || box.width < 43.5))
      .map(({ box, html }) => `${Math.round(box.width)}×${Math.round(box.height)} ${html}`),
  );
  expect(small).toEqual([]);
});
