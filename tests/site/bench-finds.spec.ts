import { AxeBuilder } from '@axe-core/playwright';
import { expect, SIZES, test } from './page-under-test.ts';

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

test('a list goes into a site that is there, is drafted from, and is taken back by one press', async ({
  watched: { page },
}) => {
  const list = [
    'SF,Context,Object,Material,Wt (g),L (mm),W (mm),Th (mm),Period',
    '101,1102,flake,flint,18,52,38,9,Late Neolithic',
    '124,1303,bone pin,bone,3.5,95,7,5,Late Neolithic',
    '195,1102,end scraper,flint,24,45,37,12,Late Neolithic',
    '196,1704,flake,flint,12,44,33,8,Late Neolithic',
  ].join('\n');
  await page.goto('/bench/');
  await page.getByText('Finds in', { exact: true }).click();
  await page
    .getByLabel('Open a finds list')
    .setInputFiles({ name: 'more-finds.csv', mimeType: 'text/csv', buffer: Buffer.from(list) });
  // The library is read first: a busy machine takes its time.
  const patience = { timeout: 30_000 };
  await expect(page.getByLabel('What is the site called?')).toHaveValue('more-finds', patience);
  await page.getByLabel('Where do these finds belong?').selectOption('wendle-marsh');
  await expect(page.getByLabel('What is the site called?')).toHaveCount(0);
  const into = page.locator('[data-into="wendle-marsh"]');
  await expect(into).toHaveText(
    'Into Wendle Marsh: 1 new find, 1 there already, the same, 0 put in the record of one there, 2 waiting for an answer, 0 left out.',
    patience,
  );
  const questions = page.getByRole('region', { name: 'Questions about the site' });
  await questions.getByRole('button', { name: 'put what the row says in the record of P3-124' }).click();
  await questions.getByRole('button', { name: 'a new fill 1704 in P7' }).click();
  await expect(into).toContainText('2 new finds, 1 there already, the same, 1 put in the record', patience);
  await expect(page.getByText('Made for these finds: 1704 in P7.')).toBeVisible();
  for (const size of SIZES) {
    await page.setViewportSize(size);
    const overflow = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    expect(overflow, size.name).toBeLessThanOrEqual(0);
  }
  const { violations } = await new AxeBuilder({ page }).include('.finds-in').analyze();
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html ?? ''}`)).toEqual([]);
  await page.getByRole('button', { name: 'Take the 3 finds' }).click();
  await expect(page.getByText('The finds are in Wendle Marsh, on the bench.')).toBeVisible();
  // The same list again: all of it is there.
  await expect(into).toContainText('0 new finds, 4 there already, the same, 0 put', patience);

  await page.getByText('Draft a lesson', { exact: true }).click();
  await expect(page.getByLabel('Finds of')).toHaveValue('wendle-marsh');
  await page.getByLabel('Finds that must be in it').fill('P1-195');
  await page.getByRole('button', { name: 'Draft', exact: true }).click();
  await expect(page.getByText('A lesson is drafted.')).toBeVisible(patience);
  await page.getByRole('button', { name: 'Begin a visit with it' }).click();
  await expect(page.getByLabel('The lesson file as text')).toHaveValue(/P1-195/);
  await expect(page.locator('.lead-count')).toHaveText(/Nothing to mend|to look at\.$/, patience);

  // It is still there after a reload, and one press takes it back: the lesson then names a find that nobody has.
  await expect(page.locator('[data-keeping="kept"]')).toBeVisible();
  await page.reload();
  await page.getByText('Finds in', { exact: true }).click();
  await expect(page.getByText('Last taken: 3 finds, to Wendle Marsh.')).toBeVisible(patience);
  await page.getByRole('button', { name: 'Take it back' }).press('Enter');
  await expect(
    page.getByText('Taken back: the finds of Wendle Marsh are as they were before.'),
  ).toBeVisible();
  await expect(page.locator('.lead-problem').first()).toContainText('P1-195', patience);
  await expect(page.getByRole('button', { name: 'Save the finds as files' })).toHaveCount(0);
});
