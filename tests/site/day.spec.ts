import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { expect, ready, SIZES, test } from './page-under-test.ts';

/** The page with one of its demo days open. */
async function openDemo(page: Page, title: string): Promise<void> {
  await page.goto('/day/');
  await ready(page);
  await page.getByRole('button', { name: title }).click();
  await expect(page.getByText('The file reads well.')).toBeVisible();
}

const MORNING = 'Begin from “A class morning at Wendle Marsh”';
const OPEN_DAY = 'Begin from “Six schools at Wendle Marsh”';

async function plan(page: Page): Promise<void> {
  await page.locator('[data-move="plan"]').click();
  await expect(page.locator('.day-grid').first()).toBeVisible({ timeout: 60_000 });
}

async function noFinding(page: Page): Promise<void> {
  const { violations } = await new AxeBuilder({ page }).analyze();
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html ?? ''}`)).toEqual([]);
}

const fileText = async (page: Page): Promise<string> => {
  await page.getByRole('button', { name: 'As a file' }).click();
  return page.getByLabel('The day file').inputValue();
};

test('a day is planned on the device, shown to be the best, and is still there after a reload', async ({
  watched: { page },
}) => {
  await openDemo(page, MORNING);
  await page.getByLabel('At most, seconds').fill('60');
  await page.getByLabel('At most, seconds').blur();
  await plan(page);
  await expect(page.locator('.day-worth')).toContainText('Shown to be the best');
  // Each group waits one of six slots and walks its shortest round of ten minutes: counted by hand.
  await expect(page.locator('.day-worth')).toContainText('100 min with nothing on');
  await expect(page.locator('.day-worth')).toContainText('50 min on foot, all groups');
  await expect(page.locator('.day-worth')).toContainText('By hand', { timeout: 30_000 });
  await page.reload();
  await ready(page);
  await expect(page.getByRole('heading', { name: 'A class morning at Wendle Marsh' })).toBeVisible();
  await expect(page.locator('.day-worth')).toContainText('Shown to be the best');
  for (const size of SIZES) {
    await page.setViewportSize({ width: size.width, height: size.height });
    const overflow = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    expect(overflow, size.name).toBeLessThanOrEqual(0);
    await noFinding(page);
  }
});

test('form and file are in step: a change in one is a change in the other, and comments stay', async ({
  watched: { page },
}) => {
  await openDemo(page, MORNING);
  await page.getByText('Groups 5').click();
  await page.locator('.day-entry summary', { hasText: 'Otter' }).click();
  const pupils = page.locator('.day-entry[open]').getByLabel('Pupils', { exact: true });
  await pupils.fill('7');
  await pupils.blur();
  const text = await fileText(page);
  expect(text).toContain('otter: { name: Otter, pupils: 7,');
  expect(text).toContain('# minutes on foot; other ways are put together from these');
  await page.getByLabel('The day file').fill(text.replace('name: Otter', 'name: Water otter'));
  await page.getByRole('button', { name: 'As a form' }).click();
  await page.getByText('Groups 5').click();
  await expect(page.locator('.day-entry summary', { hasText: 'Water otter' })).toBeVisible();
});

test('what is wrong is told as one writes, with a press that mends it', async ({ watched: { page } }) => {
  await openDemo(page, MORNING);
  const text = await fileText(page);
  await page.getByLabel('The day file').fill(text.replace('must-see: [pit,', 'must-see: [pits,'));
  await expect(page.getByText('1 thing to mend')).toBeVisible();
  await expect(page.locator('[data-move="plan"]')).toHaveAttribute('aria-disabled', 'true');
  await page.getByRole('button', { name: /line \d+, column \d+/ }).click();
  await expect(page.getByLabel('The day file')).toBeFocused();
  await noFinding(page);
  await page.getByRole('button', { name: 'Write “pit”' }).click();
  await expect(page.getByText('The file reads well.')).toBeVisible();
  expect(await page.getByLabel('The day file').inputValue()).toBe(text);
});

test('stopped early, the best so far is kept, and the page answers meanwhile', async ({
  watched: { page },
}) => {
  await openDemo(page, OPEN_DAY);
  await page.getByLabel('At most, seconds').fill('300');
  await page.getByLabel('At most, seconds').blur();
  await page.locator('[data-move="plan"]').click();
  await expect(page.locator('.day-work')).toContainText('Best so far', { timeout: 60_000 });
  // The page answers while the solver works.
  await page.getByRole('button', { name: 'As a file' }).click();
  await expect(page.getByLabel('The day file')).toBeVisible();
  await page.getByRole('button', { name: 'Stop and keep the best so far' }).click();
  await expect(page.locator('.day-worth')).toContainText('Stopped by you');
  await expect(page.locator('.day-grid tbody tr').first()).toBeVisible();
});

test('a day that cannot be says why; what is allowed goes to the file, and there is a plan', async ({
  watched: { page },
}) => {
  await openDemo(page, MORNING);
  const text = await fileText(page);
  await page
    .getByLabel('The day file')
    .fill(text.replace('ages: 7-8, arrives: "09:40"', 'ages: 7-8, arrives: "10:20"'));
  await expect(page.locator('[data-move="plan"]')).toHaveAttribute('aria-disabled', 'false');
  await page.waitForTimeout(400);
  await page.locator('[data-move="plan"]').click();
  await expect(page.getByText('There is no such day')).toBeVisible({ timeout: 60_000 });
  await expect(page.getByText('Heron has 5 things to do and is there for 4 slots.')).toBeVisible();
  await noFinding(page);
  await page.getByRole('button', { name: 'Allow this: Let Heron go without Pots' }).click();
  await expect(page.locator('.day-grid').first()).toBeVisible({ timeout: 60_000 });
  expect(await page.getByLabel('The day file').inputValue()).toContain('must-see: [');
  await expect(page.getByText('There is no such day')).toBeHidden();
});

test('a slot is fixed by hand by keyboard, and the rest is planned around it', async ({
  watched: { page },
}) => {
  await openDemo(page, MORNING);
  await plan(page);
  const cell = page.locator('.day-cell', { hasText: 'The pit' }).first();
  await cell.focus();
  await page.keyboard.press('Enter');
  await expect(page.locator('#day-pin-title')).toBeFocused();
  await page.keyboard.press('Tab');
  await page.keyboard.type('nothing');
  await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  await expect(page.locator('.day-fixed')).toHaveText('fixed', { timeout: 60_000 });
  await expect(page.locator('.day-worth')).toContainText('not as');
  await expect(page.locator('.day-cell', { hasText: 'fixed' })).toContainText('nothing on');
  expect(await fileText(page)).toContain('at: free');
});

test('wet weather closes stations, and each weather keeps a plan of its own', async ({
  watched: { page },
}) => {
  await openDemo(page, MORNING);
  await plan(page);
  await page.getByLabel(/Wet weather/).check();
  await expect(page.locator('.day-grid')).toHaveCount(0);
  await plan(page);
  await expect(page.locator('.day-worth')).toContainText('Closed in the rain: The pit.');
  await expect(page.locator('.day-grid').first()).not.toContainText('The pit');
  await page.getByLabel(/Wet weather/).uncheck();
  await expect(page.locator('.day-grid').first()).toContainText('The pit');
});
