import { readdirSync, readFileSync } from 'node:fs';
import type { Server } from 'node:http';
import type { Page } from '@playwright/test';
import { expect, ready, test } from './page-under-test.ts';
import { siteServer } from './site-server.ts';

test.use({ serviceWorkers: 'allow' });

const copyLine = (page: Page) => page.locator('[data-offline-copy]');

/** What the build of the site under test wrote of its copy. */
const builtCopy = () =>
  JSON.parse(readFileSync('dist/offline.json', 'utf8')) as { readonly made: string; readonly bytes: number };

/** A moment as the page writes it, in words of our own: "29 November 2026 at 14:05". */
const dateOnPage = (page: Page, iso: string): Promise<string> =>
  page.evaluate((given) => {
    const made = new Date(given);
    const month = [
      'January February March April May June July August September October November December',
    ].flatMap((names) => names.split(' '))[made.getMonth()];
    const two = (part: number): string => String(part).padStart(2, '0');
    return `${made.getDate()} ${month} ${made.getFullYear()} at ${two(made.getHours())}:${two(made.getMinutes())}`;
  }, iso);

test('on the second visit the whole site works without a signal, and says what is kept and since when', async ({
  watched: { page },
  context,
}) => {
  await page.goto('/');
  await expect(copyLine(page)).toHaveAttribute('data-state', 'kept', { timeout: 60_000 });
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
  await context.setOffline(true);
  await page.goto('/lessons/made-or-not/');
  await ready(page);
  await page.locator('.sort-ground [data-find]').first().click();
  await page.locator('.tray-place').first().click();
  await expect(page.getByRole('status').first()).toContainText('went into');
  await page.goto('/lessons/how-old/teacher-notes/');
  await expect(page.getByRole('heading', { name: 'One pit, how many times?' })).toBeVisible();

  await page.goto('/');
  const { made, bytes } = builtCopy();
  const lessons = readdirSync('dist/lessons').length;
  await expect(copyLine(page)).toContainText(
    `This device keeps ${lessons} lessons with their papers, the Bench, the Day sheet, the outcomes, sources and help, as made on ${await dateOnPage(page, made)} (${Math.round(bytes / 1e6)} MB).`,
  );
  // What it says it keeps: each lesson, each of its papers and each page of the site, asked for without a signal.
  const pages = readdirSync('dist', { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('index.html'))
    .map((file) => `/${file.slice(0, -'index.html'.length)}`);
  expect(pages.length).toBeGreaterThan(100);
  const absent = await page.evaluate(async (addresses) => {
    const answers = await Promise.all(
      addresses.map((address) =>
        fetch(address).then(
          ({ ok }) => ok,
          () => false,
        ),
      ),
    );
    return addresses.filter((_, index) => answers[index] !== true);
  }, pages);
  expect(absent).toEqual([]);
});

test.describe('an update', () => {
  const port = Number(process.env['PITLORE_PORT'] ?? 4329) + 1000;
  const newer = new Map<string, string>();
  const asked: string[] = [];
  let server: Server;
  test.use({ baseURL: `http://localhost:${port}` });
  test.beforeAll(async () => {
    server = siteServer('dist', newer, (address) => asked.push(address));
    await new Promise<void>((listening) => {
      server.listen(port, listening);
    });
  });
  test.afterAll(() => {
    server.close();
    server.closeAllConnections();
  });

  test('that comes while a visit is typed at waits until every page is closed, and loses nothing', async ({
    watched: { page },
    context,
  }) => {
    await page.goto('/bench/');
    await expect(copyLine(page)).toHaveAttribute('data-state', 'kept', { timeout: 60_000 });
    await page.reload();
    await page.getByLabel('What is it called?').fill('Before the update');
    await page.getByRole('button', { name: 'Begin', exact: true }).click();
    const file = page.getByLabel('The lesson file as text');
    await file.fill('---\ntitle: Half a sent');

    // A build a day later: another date, and one page that says something else.
    const copy = builtCopy();
    const { made } = copy;
    const later = new Date(Date.parse(made) + 86_400_000).toISOString();
    const worker = readFileSync('dist/offline.js', 'utf8');
    const changed = worker.replace(
      /"revision":"(\w+)","url":"(offline\.json|help\/index\.html)"/g,
      '"revision":"later$1","url":"$2"',
    );
    expect(changed.split('later').length).toBe(3);
    newer.set('/offline.js', changed);
    newer.set('/offline.json', JSON.stringify({ ...copy, made: later }));
    newer.set('/help/index.html', readFileSync('dist/help/index.html', 'utf8').replace('<h1>', '<h1>Newer '));
    asked.length = 0;
    await page.evaluate(async () => {
      const registration = await navigator.serviceWorker.ready;
      await registration.update();
    });
    await expect(copyLine(page)).toContainText(`A newer copy, made on ${await dateOnPage(page, later)}`, {
      timeout: 60_000,
    });
    // Only what has changed was fetched.
    expect(asked.filter((address) => address !== '/offline.js').toSorted()).toEqual([
      '/help/index.html',
      '/offline.json',
    ]);
    // The page in use is the one it was: typing goes on, and so does what it is served.
    await expect(copyLine(page)).toContainText(`as made on ${await dateOnPage(page, made)}`);
    await file.press('End');
    await file.pressSequentially('ence');
    await expect(page.locator('[data-keeping="kept"]')).toBeVisible();
    await page.reload();
    await expect(file).toHaveValue('---\ntitle: Half a sentence');
    const other = await context.newPage();
    await other.goto('/help/');
    await expect(other.getByRole('heading', { level: 1 })).not.toContainText('Newer');

    // Every page closed, and opened again without a signal.
    await other.close();
    await page.goto('about:blank');
    const again = await context.newPage();
    await context.setOffline(true);
    await expect
      .poll(async () => {
        await again.goto('about:blank');
        await new Promise((rest) => setTimeout(rest, 500));
        await again.goto('/help/');
        return again.getByRole('heading', { level: 1 }).textContent();
      })
      .toContain('Newer');
    await again.goto('/bench/');
    await expect(again.getByLabel('The lesson file as text')).toHaveValue('---\ntitle: Half a sentence');
    await expect(copyLine(again)).toContainText(`as made on ${await dateOnPage(again, later)}`);
    await expect(copyLine(again)).not.toContainText('A newer copy');
  });
});
