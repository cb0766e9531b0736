import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { gzipSync } from 'node:zlib';
import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { compileLesson } from '../../shared/compile/index.ts';
import { runPitlore } from '../command/run-pitlore.ts';
import { demoLessons, demoLibrary, home } from '../demo.ts';
import { finishActivity, finishAll } from './finishing/finish-activity.ts';
import { keyboardHands } from './finishing/pupil-hands.ts';
import { expectAsDone, savedResults } from './finishing/saved-results.ts';
import { expect, test } from './opened-pack.ts';
import { printPaper } from './print-paper.ts';

const folder = mkdtempSync(join(tmpdir(), 'pitlore-pack-'));
const MOST_BYTES = 150_000;

/** A pack made now, by its lesson file; kept for the tests after. */
function packOf(file: string, name: string): string {
  const out = join(folder, `${name}.html`);
  const { code, err } = runPitlore(['pack', file, '--out', out, '--content', join(home, 'content')]);
  if (code !== 0 && !err.includes('is there already')) throw new Error(err);
  return out;
}

const demo = (name: string): string => packOf(join(home, 'content/lessons', `${name}.md`), name);

test.afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Finishes the first activity by the keyboard alone. */
const finishFirst = (page: Page): Promise<unknown> =>
  finishActivity(page.locator('section.activity').first(), keyboardHands(page));

test('a sort is finished where the device keeps nothing', async ({ opened }) => {
  const page = await opened(demo('made-or-not'));
  await page.addInitScript(() => {
    Object.defineProperty(window, 'localStorage', {
      get: () => {
        throw new DOMException('refused', 'SecurityError');
      },
    });
  });
  await page.reload();
  const isRefused = await page.evaluate(() => {
    try {
      return window.localStorage === null;
    } catch {
      return true;
    }
  });
  expect(isRefused).toBe(true);
  await finishFirst(page);
});

/** Opens every paper of a pack. */
async function openPapers(page: Page): Promise<void> {
  const shows = page.locator('.pack-paper [aria-expanded]');
  const count = await shows.count();
  expect(count).toBeGreaterThan(1);
  for (let index = 0; index < count; index += 1) await shows.nth(index).press('Enter');
  await expect(page.locator('.paper')).toHaveCount(count);
}

/** Lessons whose papers are opened too: one for each screen there is. */
const WITH_PAPERS: ReadonlySet<string> = new Set([
  'how-old',
  'in-the-hand',
  'stone-to-axe',
  'hours-in-an-axe',
  'round-the-fire',
  'a-gathering-for-all',
  'two-pits',
  'same-list',
]);

/** What is wrong with an open pack to somebody who does not see it, and drawings pointed to that are not there. */
async function faultsOf(page: Page): Promise<readonly string[]> {
  const lost = await page.evaluate(() =>
    [...document.querySelectorAll('use')]
      .map((use) => use.getAttribute('href')?.slice(1) ?? '')
      .filter((id) => document.getElementById(id) === null),
  );
  const { violations } = await new AxeBuilder({ page }).analyze();
  return [...lost, ...violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html ?? ''}`)];
}

for (const [index, { id, file, text }] of demoLessons.entries())
  test(`${id} opens from a file under 150 kB, and all in it is finished, kept and saved`, async ({
    opened,
  }) => {
    const pack = demo(id);
    expect(gzipSync(readFileSync(pack)).length).toBeLessThan(MOST_BYTES);
    const page = await opened(pack);
    if (WITH_PAPERS.has(id)) {
      await openPapers(page);
      for (const section of await page.locator('.paper .paper-section').all())
        expect((await section.innerText()).trim().split('\n').length).toBeGreaterThan(1);
      expect(await faultsOf(page)).toEqual([]);
    }
    const done = await finishAll(page, index % 2 === 0 ? 'keyboard' : 'touch');
    await page.reload();
    await expect(page.locator('[data-record]')).toHaveCount(done.length);
    const keys = await page.evaluate(() => Object.keys(localStorage).toSorted());
    expect(keys.map((key) => key.replace(/^pitlore\/1\/pack-(.*)-[0-9a-f]{8}\//, '$1 '))).toEqual(
      done.map(({ activity }) => `${id} ${activity}`).toSorted(),
    );
    const { plan } = compileLesson(file, text, demoLibrary, id);
    if (plan === null) throw new Error('a demo lesson does not compile');
    expectAsDone(plan, await savedResults(page), done);
  });

test('each paper prints from a file by one press, alone, with its caution', async ({ opened }) => {
  const page = await opened(demo('who-made-this'));
  const notes = await printPaper(page, folder, 'teacher-notes');
  const sheet = await printPaper(page, folder, 'pupil-sheet');
  const cards = await printPaper(page, folder, 'cards');
  for (const { words } of [notes, sheet, cards]) {
    expect(words).toContain('Who made this?');
    expect(words).toContain('Date');
    expect(words).toContain('Children never knap');
    // The lesson on the screen, its other papers and its presses stay off the paper.
    expect(words).not.toContain('Bring back what was done');
    expect(words).not.toContain('Show Teacher notes');
  }
  expect(notes.words).toContain('Teacher notes');
  expect(notes.words).toContain('The answers, and why');
  expect(notes.words).toContain('Polished axe head');
  expect(notes.words).not.toContain('Cut along the grey lines');
  expect(sheet.words).toContain('Choose one. How do you know?');
  expect(sheet.words).not.toContain('The answers, and why');
  expect(cards.words).toContain('Cut along the grey lines');
  expect(cards.words).toContain('104 × 58 × 34 mm');
  expect(cards.words).not.toContain('Polished axe head');
  expect(cards.foot).toContain('Who made this? · Cards to cut out');
  expect(notes.foot).toContain('1 of');
  // What was hidden for a paper is back.
  await expect(page.locator('.paper')).toHaveCount(0);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Who made this?');
});

test('the papers of a class that swaps print alone, though its deal prints from the page', async ({
  opened,
}) => {
  const page = await opened(demo('a-gathering-for-all'));
  const cards = await printPaper(page, folder, 'cards');
  expect(cards.words).toContain('Cards to cut out');
  const notes = await printPaper(page, folder, 'teacher-notes');
  expect(notes.words).toContain('The answers, and why');
  expect(notes.words).toContain('Children never knap');
});

test('hostile words of a lesson are shown and do nothing', async ({ opened }) => {
  const title = `</script><script>alert(1)</script> <img src=x onerror=alert(2)>`;
  const lesson = join(folder, 'hostile.md');
  writeFileSync(
    lesson,
    `---
title: ${JSON.stringify(title)}
site: wendle-marsh
bands: [7-9]
minutes: 20
---
Look. \\<script>alert(3)\\</script> \\<img src=x onerror=alert(4)> \\<style>*{display:none}\\</style> &lt;/script&gt;

\`\`\`sort
title: ${JSON.stringify(`${title} </style><!--`)}
finds: { pit: P3, leave-out: [P3-128] }
by: made-by
trays:
  - { name: "</script><b>made", holds: [carved, ground, fired] }
  - { name: not made, holds: [natural, burnt], hint: "<img src=x onerror=alert(6)>" }
minutes: 12
\`\`\`
`,
  );
  const page = await opened(packOf(lesson, 'hostile'));
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(title);
  await expect(page).toHaveTitle(`${title} · Pitlore`);
  expect(
    await page.evaluate(() => document.querySelectorAll('img, script:not([type]), .tray b').length),
  ).toBe(0);
  expect(await page.locator('a[href^="javascript"]').count()).toBe(0);
  await finishFirst(page);
});

test('the policy of a pack stops a script that a text would bring, were it let through', async ({
  browser,
}) => {
  const file = join(folder, 'planted.html');
  const html = readFileSync(demo('who-made-this'), 'utf8');
  writeFileSync(
    file,
    html.replace(
      '<div data-mount>',
      '<script>document.title = "ran"</script><img src="x.png"><div data-mount>',
    ),
  );
  const page = await browser.newPage();
  const said: string[] = [];
  page.on('console', (message) => said.push(message.text()));
  await page.goto(pathToFileURL(file).href);
  await expect(page.locator('.sort')).toBeVisible();
  await expect(page).not.toHaveTitle('ran');
  expect(said.filter((text) => text.includes('Content Security Policy')).length).toBeGreaterThanOrEqual(2);
  await page.close();
});
