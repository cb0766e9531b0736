import { readFileSync } from 'node:fs';
import { AxeBuilder } from '@axe-core/playwright';
import type { Download, Page } from '@playwright/test';
import { openZip } from '../../shared/visit-folder/index.ts';
import { expect, SIZES, test } from './page-under-test.ts';

const LESSON = '---\ntitle: Ours\nsite: long-acre\nbands: [7-9]\nminutes: 10\n---\nLook at each thing.\n';
const LIST =
  'pit,small-find,context,object,material,length,width,thickness\nP1,1,102,end-scraper,flint,46,37,12\nP1,2,102,blade,flint,68,19,6\n';

async function saved(page: Page, button: string): Promise<Download> {
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: button }).click();
  return download;
}

const bytesOf = async (download: Download): Promise<Buffer> => readFileSync(await download.path());

test('a visit with its own finds is saved as one file, thrown away, and opened again', async ({
  watched: { page },
}) => {
  await page.goto('/bench/');
  const open = page.getByLabel('Open a lesson file or a saved visit');
  await open.setInputFiles({ name: 'ours.md', mimeType: 'text/markdown', buffer: Buffer.from(LESSON) });
  await expect(page.getByText('ours is on the bench, as a new visit.')).toBeVisible({ timeout: 20_000 });
  await page.getByText('Finds in', { exact: true }).click();
  await page.getByLabel('Paste the list, its column names first').fill(LIST);
  await page.getByLabel('What is the site called?').fill('Long Acre');
  await page.getByRole('button', { name: /^Take the \d finds$/ }).click();
  await expect(page.getByText('The finds of Long Acre are on the bench')).toBeVisible();

  const one = await saved(page, 'Save the visit as one file');
  expect(one.suggestedFilename()).toBe('ours.zip');
  await expect(page.locator('.told')).toContainText('ours.zip is saved.');
  const zip = await bytesOf(one);
  expect(openZip(zip).visits.map(({ text, files }) => [text, files.map(({ path }) => path)])).toEqual([
    [LESSON, ['sites/long-acre.finds.csv', 'sites/long-acre.yaml']],
  ]);

  await page.getByText('On the shelf', { exact: true }).click();
  await page.getByRole('button', { name: 'Throw ours away' }).click();
  await page.getByRole('button', { name: 'Yes, throw ours away' }).click();
  await expect(page.locator('.keeping')).toHaveCount(0);

  // A zip that is cut short, and one that is none: each said in words, and nothing is on the shelf.
  await open.setInputFiles([
    { name: 'cut.zip', mimeType: 'application/zip', buffer: zip.subarray(0, zip.length - 40) },
    { name: 'list.zip', mimeType: 'application/zip', buffer: Buffer.from(LIST) },
  ]);
  await expect(page.locator('.told')).toContainText(
    'cut.zip is cut short or damaged, so nothing was taken from it.',
  );
  await expect(page.locator('.told')).toContainText('list.zip is not a zip, whatever its name says.');
  await expect(page.locator('.shelf-list li')).toHaveCount(0);

  await open.setInputFiles({ name: 'from a colleague.zip', mimeType: 'application/zip', buffer: zip });
  await expect(page.locator('.told')).toContainText(
    'ours is on the bench, as a new visit, with 2 files of finds.',
  );
  await expect(page.getByRole('button', { name: 'Save the finds as files' })).toBeVisible();
  await expect(page.getByLabel('The lesson file as text')).toHaveValue(LESSON);
  // The finds are known to the checker again: the site of the lesson is no unknown one.
  await expect(page.locator('.lead-count')).toHaveText(/Nothing to mend|to look at\.$/);
});

test('a dropped zip of two visits and a stray file, the whole shelf saved, and nothing to find for axe', async ({
  watched: { page },
}) => {
  await page.goto('/bench/');
  const zip = readFileSync('tests/content/zips/first-version.zip').toString('base64');
  const drag = (kind: string): Promise<void> =>
    page.evaluate(
      ([kind, coded]) => {
        const file = (name: string, contents: BlobPart): File => new File([contents], name);
        const bytes = Uint8Array.from(atob(coded), (sign) => sign.codePointAt(0) ?? 0);
        const held = new DataTransfer();
        held.items.add(file('gravel-end.zip', bytes));
        held.items.add(file('second.md', '---\ntitle: Second\n---\n'));
        held.items.add(file('film.mp4', 'x'));
        document.body.dispatchEvent(
          new DragEvent(kind, { dataTransfer: held, bubbles: true, cancelable: true }),
        );
      },
      [kind, zip] as const,
    );
  // The Bench says that it would take them before they are let go.
  await expect(async () => {
    await drag('dragover');
    await expect(page.locator('.drop-here')).toBeVisible({ timeout: 500 });
  }).toPass({ timeout: 30_000 });
  await drag('drop');
  const told = page.locator('.told');
  await expect(told).toContainText('2 visits were taken in', { timeout: 20_000 });
  await expect(told).toContainText('1 file was left out');
  await expect(told.locator('li')).toContainText('film.mp4');
  await expect(page.locator('.drop-here')).toHaveCount(0);
  await expect(page.locator('[data-keeping="kept"]')).toBeVisible();
  for (const size of SIZES) {
    await page.setViewportSize(size);
    const overflow = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    expect(overflow, size.name).toBeLessThanOrEqual(0);
  }
  await page.locator('.shelf').evaluate((shelf: HTMLDetailsElement) => {
    shelf.open = true;
  });
  await expect(page.locator('.shelf-list > li')).toHaveCount(2);
  const { violations } = await new AxeBuilder({ page }).analyze();
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html ?? ''}`)).toEqual([]);

  const shelf = await saved(page, 'Save the whole shelf');
  expect(shelf.suggestedFilename()).toMatch(/^pitlore-shelf-\d{4}-\d\d-\d\d\.zip$/);
  const { visits } = openZip(await bytesOf(shelf));
  expect(visits.map(({ name, photos }) => [name, [...photos.keys()]])).toEqual([
    ['gravel-end-für-alle', ['jaw.jpg']],
    ['second', []],
  ]);
});
