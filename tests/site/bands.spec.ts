import { expect, ready, test } from './page-under-test.ts';

const LESSON = '/lessons/hours-in-an-axe/';

test('choosing an age keeps the place, says what is different, and survives a reload', async ({
  watched: { page },
}) => {
  await page.goto(LESSON);
  await ready(page);
  const second = page.locator('#estimate-2');
  await second.getByRole('link', { name: '9–11' }).click();
  await expect(page).toHaveURL(/\/ages\/9-11\/#estimate-2$/);
  await ready(page);
  await expect(page.locator('[data-band-said]')).toContainText('Say a number.');
  await expect(page.locator('#estimate-2').getByRole('link', { name: '9–11' })).toBeFocused();
  await expect(page.locator('#estimate-2 h2')).toBeInViewport();
  await page.reload();
  await ready(page);
  await expect(page.locator('#estimate-2').getByRole('link', { name: '9–11' })).toHaveAttribute(
    'aria-current',
    'true',
  );
});

test('an age is asked in its own way, and each age has a play of its own', async ({ watched: { page } }) => {
  await page.goto(`${LESSON}ages/7-9/`);
  await ready(page);
  const younger = page.locator('#estimate-2');
  await expect(younger.getByRole('spinbutton')).toHaveCount(0);
  await younger.locator('button.choice').first().click();
  await expect(younger.locator('button.choice').first()).toHaveAttribute('aria-pressed', 'true');

  await page.locator('#estimate-2').getByRole('link', { name: '9–11' }).click();
  await ready(page);
  const older = page.locator('#estimate-2');
  await expect(older.locator('button.choice')).toHaveCount(0);
  await older.locator('input:not([type="range"])').first().fill('20');
  await older.locator('input:not([type="range"])').first().press('Enter');

  await older.getByRole('link', { name: '7–9' }).click();
  await ready(page);
  await expect(page.locator('#estimate-2 button.choice').first()).toHaveAttribute('aria-pressed', 'true');
  await page.locator('#estimate-2').getByRole('link', { name: '9–11' }).click();
  await ready(page);
  await expect(page.locator('#estimate-2 input:not([type="range"])').first()).toHaveValue('20');
});

test('by keyboard alone: Tab to an age, Enter, and on from the same place', async ({ watched: { page } }) => {
  await page.goto(LESSON);
  await ready(page);
  await page.locator('#estimate-2').getByRole('link', { name: 'all together' }).focus();
  await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  await expect(page).toHaveURL(/\/ages\/7-9\/#estimate-2$/);
  await ready(page);
  await expect(page.locator('[data-band-said]')).not.toBeEmpty();
  await page.keyboard.press('Tab');
  await expect(page.locator('#estimate-2').getByRole('link', { name: '9–11' })).toBeFocused();
});

test('without script the ages are links to the same activity', async ({ browser, baseURL }) => {
  const context = await browser.newContext({ javaScriptEnabled: false });
  const page = await context.newPage();
  await page.goto(`${baseURL ?? ''}${LESSON}`);
  await page.locator('#estimate-2').getByRole('link', { name: '9–11' }).click();
  await expect(page).toHaveURL(/\/ages\/9-11\/#estimate-2$/);
  await expect(page.locator('#estimate-2 h2')).toBeInViewport();
  await context.close();
});

test('a lesson for one age has nothing to choose', async ({ watched: { page } }) => {
  await page.goto('/lessons/made-or-not/');
  await expect(page.locator('.bands')).toHaveCount(0);
});
