import { expect, ready, test } from './page-under-test.ts';

test('on the second visit the whole site works without a signal', async ({ watched: { page }, context }) => {
  await page.goto('/');
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
  await expect(page.getByText('Ready for no signal')).toBeVisible();
  await context.setOffline(true);
  await page.goto('/lessons/made-or-not/');
  await ready(page);
  await page.locator('.sort-ground [data-find]').first().click();
  await page.locator('.tray-place').first().click();
  await expect(page.getByRole('status').first()).toContainText('went into');
  await page.goto('/lessons/how-old/teacher-notes/');
  await expect(page.getByRole('heading', { name: 'One pit, how many times?' })).toBeVisible();
});
