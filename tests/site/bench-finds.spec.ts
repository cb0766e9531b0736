import { expect, test } from './page-under-test.ts';

test('a find is keyed in and becomes a row of the list', async ({ watched: { page } }) => {
  await page.goto('/bench/');
  await page.getByText('Finds in', { exact: true }).click();
  await page.getByText('Key in a find', { exact: true }).click();
  for (const [label, value] of [
    ['pit', 'P1'],
    ['small-find number', '12'],
    ['context', '102'],
    ['object', 'scraper'],
    ['length in mm', '31'],
    ['width in mm', '24'],
    ['thickness in mm', '8'],
  ] as const)
    await page.locator('.key-in').getByLabel(label, { exact: true }).fill(value);
  await page.getByRole('button', { name: 'Add it to the list' }).click();
  await expect(page.getByLabel('Paste the list, its column names first')).toHaveValue(
    /\nP1,12,102,scraper,,31,24,8,/,
  );
  await expect(page.locator('.finds-in strong').first()).toContainText('1 row:');
});
