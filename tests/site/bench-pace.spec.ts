import { readFileSync } from 'node:fs';
import { expect, test } from './page-under-test.ts';
import { TRACED, tasksOf } from './task-times.ts';

const FINDS = 3000;
/** A press is answered at once where no task of the page is longer. */
const LONGEST_TASK_MS = 200;
/** Once, when the list is opened: its 3,000 lines are laid out in their field (about 130 ms). */
const LONGEST_OPENING_MS = 300;
const LONGEST_DRAFT_MS = 1000;

/** A list of so many rows, made of the rows of the invented list, numbered anew. */
function longList(count: number): string {
  const [head, ...lines] = readFileSync('tests/content/finds-in/finds-as-they-come.csv', 'utf8').split(
    /\r?\n/,
  );
  const models = lines.filter((line) => /^\d+,/.test(line));
  const rows = Array.from({ length: count }, (_, index) =>
    (models[index % models.length] ?? '').replace(/^\d+/, String(index + 1)),
  );
  return [head, ...rows].join('\n');
}

test('the page answers while a list of 3,000 finds is read and drafted from', async ({
  watched: { page },
  browser,
}, info) => {
  await page.goto('/bench/');
  await page.getByLabel('Begin from').locator('option').nth(3).waitFor({ state: 'attached' });
  const trace = info.outputPath('tasks.json');
  await browser.startTracing(page, { path: trace, categories: TRACED });
  await page.getByText('Finds in', { exact: true }).click();
  await page.getByLabel('Open a finds list').setInputFiles({
    name: 'list.csv',
    mimeType: 'text/csv',
    buffer: Buffer.from(longList(FINDS)),
  });
  await expect(page.locator('.finds-in strong').first()).toContainText(`${FINDS} rows`, { timeout: 30_000 });
  await page.getByLabel('What is the site called?').fill('');
  await page.getByLabel('What is the site called?').pressSequentially('Gravel End');
  const take = page.getByRole('button', { name: /^Take the \d+ finds$/ });
  await expect(take).toHaveAttribute('aria-disabled', 'false', { timeout: 30_000 });
  await take.click();
  await page.getByText('Draft a lesson', { exact: true }).click();
  await expect(page.getByLabel('Finds of')).toHaveValue('gravel-end', { timeout: 30_000 });
  await browser.stopTracing();
  const readingTasks = tasksOf(trace);

  await browser.startTracing(page, { path: trace, categories: TRACED });
  const pins = page.locator('.draft input[type="text"]').first();
  // Which signs arrived while the draft was still being made.
  await page.evaluate(() => {
    const status = document.querySelector('.draft [role="status"]');
    const taken: string[] = [];
    document.querySelector('.draft input[type="text"]')?.addEventListener('input', () => {
      taken.push(status?.textContent ?? '');
    });
    Object.assign(globalThis, { takenWhile: taken });
  });
  await page.getByRole('button', { name: 'Draft', exact: true }).click();
  await pins.pressSequentially('P1-');
  await expect(page.getByText('A lesson is drafted.')).toBeVisible({ timeout: 30_000 });
  await expect(pins).toHaveValue('P1-');
  await browser.stopTracing();
  const draftingTasks = tasksOf(trace);

  const taken = await page.evaluate(() => (globalThis as unknown as { takenWhile: string[] }).takenWhile);
  expect(taken).toContain('Drafting …');
  const longest = (tasks: ReturnType<typeof tasksOf>, thread: 'page' | 'worker'): number =>
    Math.max(...tasks.filter((task) => task.thread === thread).map(({ processorMs }) => processorMs));
  expect(longest(readingTasks, 'page')).toBeLessThan(LONGEST_OPENING_MS);
  expect(longest(draftingTasks, 'page')).toBeLessThan(LONGEST_TASK_MS);
  // The draft is the one long task of the worker.
  expect(longest(draftingTasks, 'worker')).toBeLessThan(LONGEST_DRAFT_MS);
});
