import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { expect as expectSoon, ready, SIZES, test } from './page-under-test.ts';

/** A visit is checked and planned in workers: patience for a machine that does other work. */
const expect = expectSoon.configure({ timeout: 30_000 });

const NAME = 'An axe day';

async function noFinding(page: Page): Promise<void> {
  const { violations } = await new AxeBuilder({ page }).analyze();
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html ?? ''}`)).toEqual([]);
}

/** Goes to a thing and presses it, as from the keyboard. */
async function press(page: Page, name: string | RegExp, role: 'button' | 'link' = 'button'): Promise<void> {
  await page.getByRole(role, { name, exact: true }).first().focus();
  await page.keyboard.press('Enter');
}

async function begin(page: Page, name: string, from: string): Promise<void> {
  await page.getByLabel('What is it called?').fill(name);
  await page.getByLabel('Begin from').selectOption(from);
  await press(page, 'Begin');
  await expect(page.locator('.keeping-name')).toHaveText(`${name.toLowerCase().replaceAll(' ', '-')}.md`);
}

const file = (page: Page) => page.getByLabel('The lesson file as text');
const fresh = (page: Page) => expect(page.locator('.lead-count[data-state="fresh"]')).toBeVisible();

test('from a visit to a day that is planned, and back to the visit, by keyboard', async ({
  watched: { page },
}) => {
  page.setDefaultTimeout(30_000);
  await page.goto('/bench/');
  await page.getByLabel('Begin from').locator('option').nth(3).waitFor({ state: 'attached' });
  await begin(page, NAME, 'order-of-an-axe');
  await fresh(page);
  // Another visit is begun since: coming back must not find that one.
  await page.locator('.shelf > summary').focus();
  await page.keyboard.press('Enter');
  await begin(page, 'Another', 'two-pits');
  await press(page, 'Open an-axe-day');
  await expect(page.locator('.keeping-name')).toHaveText('an-axe-day.md');
  await page.getByLabel('Pupils', { exact: true }).fill('12');

  // What stops the lesson stops the day, and is said.
  const whole = await file(page).inputValue();
  await file(page).fill(whole.replace('bands: [11-14]', 'bands: [11-15]'));
  await expect(page.locator('.lead-count[data-state="fresh"]')).toContainText('stops the lesson');
  await press(page, 'Plan a day with it');
  await expect(page.getByRole('status').filter({ hasText: 'A day is made when' })).toBeVisible();
  await file(page).fill(whole.replace('title: The order of an axe', 'title: Our axe, step by step'));
  await expect(page.locator('.lead-count[data-state="fresh"]')).not.toContainText('stops the lesson');
  await noFinding(page);
  await press(page, 'Plan a day with it');

  await page.waitForURL('**/day/');
  await ready(page);
  await expect(
    page.getByRole('heading', { level: 2, name: 'A day with “Our axe, step by step”' }),
  ).toBeVisible();
  await expect(page.getByText('The file reads well.')).toBeVisible();
  await expect(page.locator('.day-note')).toContainText('Made from the lesson “Our axe, step by step”');
  await press(page, 'Make the plan');
  await expect(page.locator('.day-grid').first()).toBeVisible({ timeout: 60_000 });
  // Three stations for twelve pupils: three groups of four, and each meets each.
  for (const row of await page.locator('.day-grid').first().locator('tbody tr').all())
    for (const station of ['Twelve steps to an axe', 'Knapping demonstration', 'Handling real flint'])
      await expect(row).toContainText(station);
  for (const size of SIZES) {
    await page.setViewportSize({ width: size.width, height: size.height });
    const overflow = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    expect(overflow, size.name).toBeLessThanOrEqual(0);
  }
  await noFinding(page);
  await press(page, 'Bench', 'link');
  await expect(page.locator('.keeping-name')).toHaveText('an-axe-day.md');
  await expect(file(page)).toHaveValue(/title: Our axe, step by step/);
});

test('a change of a day is not lost to the next one, nor to leaving the page in the midst of it', async ({
  watched: { page },
}) => {
  await page.goto('/day/');
  await ready(page);
  await press(page, 'Begin from “A class morning at Wendle Marsh”');
  await expect(page.getByText('The file reads well.')).toBeVisible();

  // Two changes in one moment, the second before the worker has answered the first: both are written.
  await page.getByText('The day', { exact: true }).focus();
  await page.keyboard.press('Enter');
  await page.locator('.day-form > details[open]').evaluate((form) => {
    form.querySelector<HTMLInputElement>('.day-ticks label:last-of-type input')?.click();
    form.querySelector<HTMLInputElement>('.day-fields > .day-check input')?.click();
  });
  await press(page, 'As a file');
  await expect(page.getByLabel('The day file')).toHaveValue(
    /^must-see: \[ ?pit, sorting, pots, grinding ?\]$[^]*^late-walks: true$/m,
  );
  await press(page, 'As a form');

  // What is being typed as the page is left is there on coming back.
  await page.getByText('The day', { exact: true }).focus();
  await page.keyboard.press('Enter');
  await page.getByLabel('What it is called').focus();
  await page.keyboard.press('End');
  await page.keyboard.type(', June');
  await page.goto('/day/now/');
  await page.goto('/day/');
  await expect(
    page.getByRole('heading', { level: 2, name: 'A class morning at Wendle Marsh, June' }),
  ).toBeVisible();
});
