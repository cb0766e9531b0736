import { expect, ready, SIZES, test } from './page-under-test.ts';

const LESSON = '/lessons/who-made-this/';

for (const size of SIZES) {
  test.describe(`at ${size.name} size`, () => {
    test.use({ viewport: { width: size.width, height: size.height } });

    test('a sort is finished by keyboard alone', async ({ watched: { page } }) => {
      await page.goto(LESSON);
      await ready(page);
      await page.locator('.sort-ground [data-find]').first().focus();
      const finds = await page.locator('.sort-ground [data-find]').count();
      for (let placed = 0; placed < finds; placed += 1) {
        await page.keyboard.press('Enter');
        await expect(page.locator('.tray-place').first()).toBeFocused();
        for (let tab = 0; tab < placed % 3; tab += 1) await page.keyboard.press('Tab');
        await page.keyboard.press(placed % 2 === 0 ? 'Enter' : ' ');
        await expect(page.getByRole('status').first()).toContainText('went into');
        await expect(page.locator(':focus')).not.toHaveClass(/tray-place/);
      }
      await expect(page.locator('[data-move="read"]')).toBeFocused();
      await page.keyboard.press('Enter');
      await expect(page.getByRole('heading', { name: 'Record card' })).toBeFocused();
      await expect(page.locator('.record tbody tr')).toHaveCount(finds);
    });
  });

  test.describe(`by touch at ${size.name} size`, () => {
    test.use({ viewport: { width: size.width, height: size.height }, hasTouch: true });

    test('a sort is finished by touch alone', async ({ watched: { page } }) => {
      await page.goto(LESSON);
      await ready(page);
      const finds = await page.locator('.sort-ground [data-find]').count();
      for (let placed = 0; placed < finds; placed += 1) {
        await page.locator('.sort-ground [data-find][data-state="here"]').first().tap();
        await page
          .locator('.tray-place')
          .nth(placed % 4)
          .tap();
      }
      await page.locator('[data-move="read"]').tap();
      await expect(page.getByRole('heading', { name: 'Record card' })).toBeVisible();
      await expect(page.locator('.record-line')).toContainText(`of ${finds}`);
    });
  });
}

test('what was sorted is still there after a reload, and nothing of a person is stored', async ({
  watched: { page },
}) => {
  await page.goto(LESSON);
  await ready(page);
  await page.locator('.sort-ground [data-find]').first().click();
  await page.locator('.tray-place').nth(1).click();
  await page.reload();
  await ready(page);
  await expect(page.locator('.tray').nth(1).locator('.tray-find')).toHaveCount(1);
  await expect(page.locator('.sort-ground [data-find][data-state="gone"]')).toHaveCount(1);
  const stored = await page.evaluate(() =>
    Object.keys(localStorage).map((key) => [key, localStorage.getItem(key)] as const),
  );
  expect(stored.map(([key]) => key)).toEqual(['pitlore/1/who-made-this/sort-1']);
  const kept: unknown = JSON.parse(String(stored[0]?.[1]));
  expect(Object.keys(kept as object).toSorted()).toEqual(['hands', 'isRead', 'ownTrays', 'placed', 'way']);
  expect(await page.context().cookies()).toEqual([]);
});

test('a stored state that no longer fits is set aside, not thrown away', async ({ watched: { page } }) => {
  await page.goto(LESSON);
  await page.evaluate(() => localStorage.setItem('pitlore/1/who-made-this/sort-1', '{"way":"sideways"}'));
  await page.reload();
  await ready(page);
  await expect(page.locator('.sort-ground [data-state="here"]').first()).toBeVisible();
  expect(await page.evaluate(() => localStorage.getItem('pitlore/1/who-made-this/sort-1/set-aside'))).toBe(
    '{"way":"sideways"}',
  );
});

test('Escape puts the find back, and a step can be taken back', async ({ watched: { page } }) => {
  await page.goto(LESSON);
  await ready(page);
  const first = page.locator('.sort-ground [data-find]').first();
  await first.focus();
  await page.keyboard.press('Enter');
  await page.keyboard.press('Escape');
  await expect(first).toHaveAttribute('data-state', 'here');
  await first.click();
  await page.locator('.tray-place').first().click();
  await expect(first).toHaveAttribute('data-state', 'gone');
  await page.getByRole('button', { name: 'Step back' }).click();
  await expect(first).toHaveAttribute('data-state', 'here');
});

test('hands up: thirty children, counts keyed in, one record', async ({ watched: { page } }) => {
  await page.goto(LESSON);
  await ready(page);
  await page.getByRole('button', { name: 'Hands up' }).click();
  const finds = page.locator('.sort-ground [data-find]');
  for (let index = 0; index < (await finds.count()); index += 1) {
    await finds.nth(index).click();
    await page.locator('.hands-count').nth(0).fill('18');
    await page.locator('.hands-count').nth(1).fill('12');
  }
  await page.locator('[data-move="read"]').click();
  await expect(page.locator('.record-line')).toContainText('per cent');
});

test('trays of one’s own are named, filled and compared with the record', async ({ watched: { page } }) => {
  await page.goto('/lessons/how-old/');
  await ready(page);
  const sort = page.locator('#sort-2');
  await sort.locator('.tray-own-name').first().fill('shiny');
  const finds = await sort.locator('.sort-ground [data-find]').count();
  for (let placed = 0; placed < finds; placed += 1) {
    await sort.locator('.sort-ground [data-state="here"]').first().click();
    await sort
      .locator('.tray-place')
      .nth(placed % 3)
      .click();
  }
  await sort.locator('[data-move="read"]').click();
  await expect(sort.locator('.record-line')).toContainText('Your trays follow');
  await expect(sort.locator('.record')).toContainText('shiny');
});
