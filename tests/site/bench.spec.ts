import { readFileSync } from 'node:fs';
import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { compileLesson } from '../../shared/compile/index.ts';
import { makePack } from '../../src/packs/make-pack.ts';
import { demoLibrary, home } from '../demo.ts';
import { expect, ready, SIZES, test } from './page-under-test.ts';

const NAME = 'A day at the pit';

/** Begins a visit from one of the site's lessons, as a lead would. */
async function begin(page: Page, lesson = 'who-made-this'): Promise<void> {
  await page.goto('/bench/');
  await page.getByLabel('Begin from').locator('option').nth(3).waitFor({ state: 'attached' });
  await page.getByLabel('What is it called?').fill(NAME);
  await page.getByLabel('Begin from').selectOption(lesson);
  await page.getByRole('button', { name: 'Begin', exact: true }).click();
  await checked(page);
}

/** Waits until what stands in the file has been checked. */
const checked = (page: Page): Promise<void> =>
  expect(page.locator('.lead-count[data-state="fresh"]')).toHaveText(/Nothing to mend|to look at/, {
    timeout: 20_000,
  });

const file = (page: Page) => page.getByLabel('The lesson file as text');
const kept = (page: Page): Promise<void> => expect(page.locator('[data-keeping="kept"]')).toBeVisible();

test('a visit is begun, changed by form and in the file, and the two stay in step', async ({
  watched: { page },
}) => {
  await begin(page);
  await page
    .getByRole('button', { name: /How was each thing made\?/ })
    .first()
    .click();
  await page.getByLabel('Title', { exact: true }).fill('Made how: by whom?');
  await expect(file(page)).toHaveValue(/\ntitle: "Made how: by whom\?"\n/);
  await page.getByLabel('Minutes', { exact: true }).fill('12');
  await expect(file(page)).toHaveValue(/\nminutes: 12\n/);
  const text = await file(page).inputValue();
  await file(page).fill(text.replace('minutes: 12\n', 'minutes: 14\n# a note to myself\n'));
  await expect(page.getByLabel('Minutes', { exact: true })).toHaveValue('14');
  // The note stays through further changes by form.
  await page.getByLabel('Minutes', { exact: true }).fill('16');
  await expect(file(page)).toHaveValue(/\nminutes: 16\n# a note to myself\n/);
  await expect(page.locator('.sums')).toContainText('16 of 40');
  await page.getByRole('button', { name: 'Step back' }).click();
  await expect(file(page)).toHaveValue(/\nminutes: 14\n/);
  await page.getByRole('button', { name: 'Step forward' }).click();
  await expect(file(page)).toHaveValue(/\nminutes: 16\n/);
});

test('parts are put in, moved and taken out', async ({ watched: { page } }) => {
  await begin(page);
  const before = await page.locator('.layer').count();
  await page.locator('.add-part > summary').click();
  await page.getByRole('button', { name: 'order', exact: true }).click();
  await expect(page.locator('.layer')).toHaveCount(before + 1);
  await expect(file(page)).toHaveValue(/\n```order\n/);
  await page.getByRole('button', { name: 'Move What came first? earlier' }).click();
  await expect(page.locator('.layer-title').nth(before - 1)).toHaveText('What came first?');
  await page.getByRole('button', { name: 'Take out What came first?' }).click();
  await expect(page.locator('.layer')).toHaveCount(before);
  await expect(file(page)).not.toHaveValue(/```order/);
});

test('what is wrong is said while typing, gone to and mended by one press', async ({ watched: { page } }) => {
  await begin(page);
  const text = await file(page).inputValue();
  await file(page).fill(text.replace('by: made-by', 'by: mad-by'));
  await expect(page.locator('.lead-problem code')).toHaveText('word-unknown');
  await page.getByRole('button', { name: /go there$/ }).click();
  const selected = await file(page).evaluate((area: HTMLTextAreaElement) =>
    area.value.slice(area.selectionStart, area.selectionEnd),
  );
  expect(selected).toBe('mad-by');
  await expect(file(page)).toBeFocused();
  await page.getByRole('button', { name: 'Mend: write “made-by”' }).click();
  await expect(page.locator('.lead-count')).toHaveText('Nothing to mend.');
  await expect(file(page)).toHaveValue(text);
});

test('a visit outlives a reload, and a page that is killed loses a second at most', async ({
  watched: { page },
  context,
}) => {
  // No farewell: what a page is told when it is left, this one never hears, as in a crash.
  await page.addInitScript(() => {
    for (const farewell of ['pagehide', 'visibilitychange', 'beforeunload', 'unload'])
      addEventListener(farewell, (event) => event.stopImmediatePropagation(), { capture: true });
  });
  await begin(page);
  const text = await file(page).inputValue();
  await file(page).fill(text.replace('Who made this?', 'Kept or lost?'));
  await page.waitForTimeout(1000);
  const again = await context.newPage();
  await page.close();
  await again.goto('/bench/');
  await expect(file(again)).toHaveValue(/Kept or lost\?/);
  await again.reload();
  await expect(file(again)).toHaveValue(/Kept or lost\?/);
  // A step back is there still.
  await again.getByRole('button', { name: 'Step back' }).click();
  await expect(file(again)).toHaveValue(/title: Who made this\?/);
});

test('a second tab looks on until it takes the visit over', async ({ watched: { page }, context }) => {
  await begin(page);
  await kept(page);
  const other = await context.newPage();
  await other.goto('/bench/');
  await expect(other.locator('[data-keeping="elsewhere"]')).toBeVisible();
  await expect(file(other)).toHaveAttribute('readonly', '');
  await page.bringToFront();
  const text = await file(page).inputValue();
  await file(page).fill(text.replace('Who made this?', 'Last word'));
  await other.bringToFront();
  await other.getByRole('button', { name: 'Take it over' }).click();
  await expect(other.locator('[data-keeping="kept"]')).toBeVisible();
  await expect(file(other)).toHaveValue(/title: Last word/);
  await expect(page.locator('[data-keeping="elsewhere"]')).toBeVisible();
  await other.close();
});

test('where the browser keeps nothing, it says so and the work goes on', async ({ watched: { page } }) => {
  await page.addInitScript(() => {
    Object.defineProperty(globalThis, 'indexedDB', {
      value: {
        open: () => {
          throw new DOMException('no', 'SecurityError');
        },
      },
    });
  });
  await begin(page);
  await expect(page.locator('[data-keeping="refused"]')).toContainText('This browser keeps nothing');
  await page.getByRole('button', { name: 'Move Words later' }).first().click();
  await expect(page.locator('.lead-count')).toHaveText('Nothing to mend.');
});

test('where the device is full, it says so', async ({ watched: { page } }) => {
  await page.addInitScript(() => {
    IDBObjectStore.prototype.put = () => {
      throw new DOMException('full', 'QuotaExceededError');
    };
  });
  await begin(page);
  await expect(page.locator('[data-keeping="full"]')).toContainText('no room left');
});

test('a lesson file is opened and saved, and what is no text is refused in words', async ({
  watched: { page },
}) => {
  await page.goto('/bench/');
  await page.getByLabel('Open a lesson file').setInputFiles('content/lessons/how-old.md');
  await checked(page);
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save as a file of text' }).click();
  expect((await download).suggestedFilename()).toBe('how-old.md');
  await page.getByText('On the shelf', { exact: true }).click();
  await page
    .getByLabel('Open a lesson file')
    .setInputFiles({ name: 'a.png', mimeType: 'image/png', buffer: Buffer.from([137, 80, 78, 71, 0, 255]) });
  await expect(page.getByText('a.png is not a text file of a lesson')).toBeAttached();
});

test('the pack of the Bench is, byte for byte, the pack of the command line', async ({
  watched: { page },
}) => {
  await page.goto('/bench/');
  for (const name of ['how-old', 'hours-in-an-axe']) {
    await page.getByLabel('Open a lesson file').setInputFiles(`content/lessons/${name}.md`);
    await expect(page.locator('.keeping-name')).toHaveText(`${name}.md`);
    await checked(page);
    const download = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Make the pack' }).click();
    const here = readFileSync(await (await download).path(), 'utf8');
    const { plan } = compileLesson(
      `${name}.md`,
      readFileSync(`content/lessons/${name}.md`, 'utf8'),
      demoLibrary,
      name,
    );
    if (plan === null) throw new Error('a demo lesson does not compile');
    expect(here === (await makePack(name, plan, demoLibrary, home)).html).toBe(true);
    await page.locator('.shelf').evaluate((shelf: HTMLDetailsElement) => {
      shelf.open = true;
    });
  }
});

test('the ten steps are marked as they are done', async ({ watched: { page } }) => {
  await page.goto('/bench/');
  await page.getByText('A first visit in ten steps').click();
  await expect(page.locator('.steps-list [data-state="done"]')).toHaveCount(0);
  await begin(page, '');
  await page.getByText('A first visit in ten steps').click();
  const done = (name: string) => page.locator('.steps-list li', { hasText: name });
  await expect(done('Begin a visit')).toHaveAttribute('data-state', 'done');
  await expect(done('Bring your finds')).not.toHaveAttribute('data-state', 'done');
  await page.getByRole('button', { name: 'Show the page' }).click();
  await expect(done('Look at it as pupils do')).toHaveAttribute('data-state', 'done');
});

test('by keyboard alone: begun, a part moved, a mend pressed, kept', async ({ watched: { page } }) => {
  await page.goto('/bench/');
  await page.getByLabel('Begin from').locator('option').nth(3).waitFor({ state: 'attached' });
  await page.getByLabel('What is it called?').focus();
  await page.keyboard.type(NAME);
  await page.keyboard.press('Enter');
  await checked(page);
  await page.getByRole('button', { name: 'Move Words later' }).first().focus();
  await page.keyboard.press('Enter');
  await expect(file(page)).toHaveValue(/---\n```sort/);
  await file(page).focus();
  await page.keyboard.press('Control+Z');
  await expect(file(page)).toHaveValue(/---\nWrite here/);
  await page.keyboard.press('Control+Shift+Z');
  await expect(file(page)).toHaveValue(/---\n```sort/);
  await kept(page);
});

test.describe('from the kept copy', () => {
  test.use({ serviceWorkers: 'allow' });
  test('with no signal the Bench checks, shows the page and the papers, and makes a pack', async ({
    watched: { page },
    context,
  }) => {
    await page.goto('/bench/');
    await page.evaluate(async () => {
      await navigator.serviceWorker.ready;
    });
    await page.reload();
    await context.setOffline(true);
    await begin(page);
    await page.getByRole('button', { name: 'Show the page' }).click();
    await expect(page.frameLocator('.page-seen').locator('h1')).toHaveText('Who made this?');
    await page.getByRole('button', { name: 'Look at Kit list' }).click();
    await expect(page.frameLocator('.papers-seen').locator('h1')).toHaveText('Who made this?');
    const download = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Make the pack' }).click();
    expect((await download).suggestedFilename()).toBe('a-day-at-the-pit.html');
  });
});

for (const size of SIZES)
  test(`the open Bench fits a ${size.name} and has no accessibility finding`, async ({
    watched: { page },
  }) => {
    await page.setViewportSize(size);
    await begin(page);
    await ready(page);
    await page
      .getByRole('button', { name: /How was each thing made\?/ })
      .first()
      .click();
    const overflow = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    expect(overflow).toBeLessThanOrEqual(0);
    await page.evaluate(() => {
      for (const details of document.querySelectorAll('details')) details.open = true;
    });
    const { violations } = await new AxeBuilder({ page }).analyze();
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html ?? ''}`)).toEqual([]);
  });

test('a visit kept by an older version opens; one of a later version is left as it is and told of', async ({
  watched: { page },
}) => {
  await page.goto('/bench/');
  await page.getByText('No visit yet').waitFor();
  await page.evaluate(async () => {
    const open = indexedDB.open('pitlore-bench');
    const database = await new Promise<IDBDatabase>((done) => {
      open.addEventListener('success', () => done(open.result));
    });
    const writing = database.transaction('visits', 'readwrite');
    const record = {
      mark: 'pitlore-visit',
      version: 1,
      name: 'old-one',
      changed: '2025-05-01T10:00:00.000Z',
    };
    const text = '---\ntitle: An old one\nsite: wendle-marsh\nbands: [7-9]\nminutes: 20\n---\nLook.\n';
    writing.objectStore('visits').put({ ...record, id: 'old', text }, 'old');
    writing.objectStore('visits').put({ ...record, id: 'new', version: 99, secret: 1 }, 'new');
    await new Promise((done) => {
      writing.addEventListener('complete', done);
    });
    database.close();
  });
  await page.reload();
  await expect(file(page)).toHaveValue(/title: An old one/);
  await page.getByText('On the shelf', { exact: true }).click();
  await expect(page.getByText('1 visit was made by a later version of Pitlore.')).toBeVisible();
  await file(page).fill('---\ntitle: Changed\n---\n');
  await kept(page);
  const left = await page.evaluate(async () => {
    const open = indexedDB.open('pitlore-bench');
    const database = await new Promise<IDBDatabase>((done) => {
      open.addEventListener('success', () => done(open.result));
    });
    const reading = database.transaction('visits').objectStore('visits').get('new');
    return new Promise((done) => {
      reading.addEventListener('success', () => done(reading.result));
    });
  });
  expect(left).toMatchObject({ version: 99, secret: 1 });
});
