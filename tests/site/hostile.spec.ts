import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Page } from '@playwright/test';
import { compileLesson } from '../../shared/compile/index.ts';
import { makePack } from '../../src/packs/make-pack.ts';
import { demoLibrary, home } from '../demo.ts';
import { hostileLessons } from './hostile-lessons.ts';
import { expect, test } from './page-under-test.ts';

/** Anything a hostile lesson could have brought about: dialogs, windows, requests to strangers. */
function watch(page: Page, isOurs: (url: string) => boolean): readonly string[] {
  const done: string[] = [];
  page.on('dialog', (dialog) => {
    done.push(`dialog: ${dialog.message()}`);
    void dialog.dismiss();
  });
  page.on('popup', (popup) => done.push(`window: ${popup.url()}`));
  page.on('request', (request) => {
    if (!isOurs(request.url())) done.push(`request: ${request.url()}`);
  });
  return done;
}

/** Marks a script would have left, in the page and in every frame of it. */
async function marks(page: Page): Promise<readonly string[]> {
  const found = await Promise.all(
    page.frames().map((frame) =>
      frame.evaluate(() => {
        const own = globalThis as { ran?: unknown };
        const bad = document.querySelectorAll(
          'iframe:not(.page-seen, .papers-seen), object, embed, base, form[action], img, link[href*="hostile"], a[href^="javascript" i], a[href^="data" i], a[href^="vbscript" i], [onload], [onerror], [onfocus], [ontoggle], meta[http-equiv="refresh" i]',
        );
        return [
          ...(own.ran === undefined ? [] : ['a script ran, or a prototype was changed']),
          ...(({} as { ran?: unknown }).ran === undefined ? [] : ['every object has what was written']),
          ...[...bad].map((element) => element.outerHTML.slice(0, 90)),
        ];
      }),
    ),
  );
  return found.flat();
}

test('there are more than forty hostile lessons, and some of them compile', () => {
  expect(hostileLessons.length).toBeGreaterThanOrEqual(40);
  const compiled = hostileLessons.filter(
    ({ text }) => compileLesson('h.md', text, demoLibrary, 'h').plan !== null,
  );
  expect(compiled.length).toBeGreaterThan(20);
});

test('typed on the Bench with its page shown, no hostile lesson does anything', async ({ page, baseURL }) => {
  test.setTimeout(400_000);
  const done = watch(
    page,
    (url) => url.startsWith(baseURL ?? '') || url.startsWith('blob:') || url.startsWith('data:'),
  );
  // Frames of the Bench may print: nothing but a press may make them.
  await page.addInitScript(() => {
    window.print = () => {
      (globalThis as { ran?: unknown }).ran = 'printed';
    };
  });
  await page.goto('/bench/');
  await page.getByLabel('What is it called?').fill('Hostile');
  await page.getByRole('button', { name: 'Begin', exact: true }).click();
  await expect(page.locator('.lead-count')).toHaveText(/Nothing to mend|to look at/);
  await page.getByRole('button', { name: 'Show the page' }).click();
  await page.locator('.page-seen').waitFor();
  await page.getByRole('button', { name: 'Look at Teacher notes' }).click();
  await page.locator('.papers-seen').waitFor();
  const file = page.getByLabel('The lesson file as text');
  const address = page.url();
  for (const { name, text } of hostileLessons) {
    await file.fill(text);
    // Forms of all parts are opened too: what they show comes from the file.
    await page.locator('.layer-name').last().click();
    await page.locator('.lead-count[data-state="fresh"]').waitFor();
    const { plan } = compileLesson('hostile.md', text, demoLibrary, 'hostile');
    if (plan !== null)
      for (const frame of ['.page-seen', '.papers-seen'])
        await expect(page.frameLocator(frame).locator('h1'), `${frame}: ${name}`).toHaveText(
          plan.title.replaceAll(/\s+/g, ' ').trim(),
        );
    expect(await marks(page), name).toEqual([]);
  }
  expect(done).toEqual([]);
  expect(page.url()).toBe(address);
  // What it was looked for with does find it, when it is there.
  await page.evaluate(() => {
    document.body.append(document.createElement('object'));
  });
  expect(await marks(page)).toEqual(['<object></object>']);
});

test('opened in a pack, no hostile lesson does anything', async ({ browser }) => {
  test.setTimeout(400_000);
  const folder = mkdtempSync(join(tmpdir(), 'hostile-'));
  const page = await browser.newPage();
  const done = watch(page, (url) => url.startsWith('file:') || url.startsWith('data:'));
  let opened = 0;
  for (const [index, { name, text }] of hostileLessons.entries()) {
    const { plan } = compileLesson('h.md', text, demoLibrary, 'h');
    if (plan === null) continue;
    opened += 1;
    const path = join(folder, `${index}.html`);
    writeFileSync(path, (await makePack('h', plan, demoLibrary, home)).html);
    await page.goto(pathToFileURL(path).href);
    await expect(page.getByRole('heading', { level: 1 }), name).toHaveText(
      plan.title.replaceAll(/\s+/g, ' ').trim(),
    );
    expect(await marks(page), name).toEqual([]);
    expect(page.url(), name).toBe(pathToFileURL(path).href);
  }
  expect(opened).toBeGreaterThan(20);
  expect(done).toEqual([]);
  await page.close();
});
