import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { gzipSync } from 'node:zlib';
import { AxeBuilder } from '@axe-core/playwright';
import { expect, test as base, type Page } from '@playwright/test';
import { runPitlore } from '../command/run-pitlore.ts';
import { footOf, pdfPages } from './pdf-text.ts';

const home = process.cwd();
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

/** Every pack test is without a network, and fails on any word on the console and any request but the file itself. */
const test = base.extend<{ opened: (file: string) => Promise<Page> }>({
  opened: async ({ browser }, use) => {
    const context = await browser.newContext({ offline: true });
    const said: string[] = [];
    const asked: string[] = [];
    await use(async (file) => {
      const page = await context.newPage();
      const url = pathToFileURL(file).href;
      page.on('console', (message) => said.push(message.text()));
      page.on('pageerror', (error) => said.push(String(error)));
      page.on('dialog', (dialog) => said.push(dialog.message()));
      page.on('request', (request) => {
        if (request.url().split('#')[0] !== url && !request.url().startsWith('data:'))
          asked.push(request.url());
      });
      await page.goto(url);
      return page;
    });
    await context.close();
    expect(said).toEqual([]);
    expect(asked).toEqual([]);
  },
});

test.afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Sorts every find by the keyboard alone and reads the record. */
async function sortByKeyboard(page: Page): Promise<void> {
  const finds = await page.locator('.sort-ground [data-find]').count();
  expect(finds).toBeGreaterThan(3);
  await page.locator('.sort-ground [data-find]').first().focus();
  for (let placed = 0; placed < finds; placed += 1) {
    await page.keyboard.press('Enter');
    await expect(page.locator('.tray-place').first()).toBeFocused();
    await page.keyboard.press('Enter');
    const next = placed === finds - 1 ? '[data-move="read"]' : '.sort-ground [data-find][data-state="here"]';
    await expect(page.locator(`:is(${next}):focus`)).toHaveCount(1);
  }
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { name: 'Record card' })).toBeFocused();
  await expect(page.locator('.record tbody tr')).toHaveCount(finds);
}

test('a handling session and a talk are gone through in a file, and told without a score', async ({
  opened,
}) => {
  const file = demo('in-the-hand');
  expect(gzipSync(readFileSync(file)).length).toBeLessThan(MOST_BYTES);
  const page = await opened(file);
  await page.locator('.handle [data-sense="feel"]').focus();
  await page.keyboard.press('Enter');
  await expect(page.locator('.handle [data-sense="feel"]')).toHaveAttribute('aria-pressed', 'true');
  await expect(page.locator('.handle [data-move="read"]')).not.toHaveAttribute('aria-disabled', 'true');
  await page.locator('.handle [data-move="read"]').press('Enter');
  await expect(page.locator('.handle')).toContainText('There is no score');
  // The record takes the focus a moment after it is drawn: a key pressed before that goes astray.
  await expect(page.locator('.handle [data-record]')).toBeFocused();
  await page.locator('.talk [data-asks="before"] [data-choice="a"]').press(' ');
  await expect(page.locator('.talk [data-asks="before"] [data-choice="a"]')).toHaveAttribute(
    'aria-pressed',
    'true',
  );
  await expect(page.locator('.talk [data-move="read"]')).toHaveAttribute('aria-disabled', 'false');
  await page.locator('.talk [data-move="read"]').press('Enter');
  await expect(page.locator('.talk')).toContainText('there is no score');
  await expect(page.locator('[data-caution]')).toContainText('touch what is on the tray');
});

test('a sort is finished by keyboard from a file, and is there after it is opened again', async ({
  opened,
}) => {
  const file = demo('who-made-this');
  const page = await opened(file);
  await sortByKeyboard(page);
  await page.reload();
  await expect(page.locator('.record tbody tr').first()).toBeVisible();
  const keys = await page.evaluate(() => Object.keys(localStorage));
  expect(keys).toHaveLength(1);
  expect(keys[0]).toMatch(/^pitlore\/1\/pack-who-made-this-[0-9a-f]{8}\/sort-1$/);
});

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
  await sortByKeyboard(page);
});

/** Opens every paper of a pack. */
async function openPapers(page: Page): Promise<void> {
  const shows = page.locator('.pack-paper [aria-expanded]');
  const count = await shows.count();
  expect(count).toBeGreaterThan(1);
  for (let index = 0; index < count; index += 1) await shows.nth(index).press('Enter');
  await expect(page.locator('.paper')).toHaveCount(count);
}

const kinds: readonly { readonly lesson: string; readonly island: string; readonly around: string }[] = [
  { lesson: 'how-old', island: '.sort', around: '.sort-ground' },
  { lesson: 'in-the-hand', island: '.handle', around: '.handle' },
  { lesson: 'stone-to-axe', island: '.order', around: '.order-of' },
  { lesson: 'hours-in-an-axe', island: '.estimate', around: '.estimate-subject' },
  { lesson: 'round-the-fire', island: '.barter', around: '.barter-talk' },
  { lesson: 'a-gathering-for-all', island: '.barter', around: '.barter-talk' },
  { lesson: 'two-pits', island: '.compare', around: '.compare-plan svg path' },
  { lesson: 'same-list', island: '.compare', around: '.tally' },
];

for (const { lesson, island, around } of kinds)
  test(`${lesson} opens from a file with its drawings, answers, and stays under 150 kB`, async ({
    opened,
  }) => {
    const file = demo(lesson);
    expect(gzipSync(readFileSync(file)).length).toBeLessThan(MOST_BYTES);
    const page = await opened(file);
    await expect(page.locator(`.activity ${island}`).first()).toBeVisible();
    await expect(page.locator(`.activity ${around}`).first()).toBeVisible();
    await openPapers(page);
    for (const section of await page.locator('.paper .paper-section').all())
      expect((await section.innerText()).trim().split('\n').length).toBeGreaterThan(1);
    // Every drawing that is pointed to is in the file.
    const lost = await page.evaluate(() =>
      [...document.querySelectorAll('use')]
        .map((use) => use.getAttribute('href')?.slice(1) ?? '')
        .filter((id) => document.getElementById(id) === null),
    );
    expect(lost).toEqual([]);
    const { violations } = await new AxeBuilder({ page }).analyze();
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html ?? ''}`)).toEqual([]);
  });

/** Presses a paper's button and prints what the browser would print, as a PDF. */
async function printPaper(
  page: Page,
  path: string,
): Promise<{ readonly words: string; readonly foot: string }> {
  const file = join(folder, `${path}.pdf`);
  await page.evaluate(() => {
    window.print = () =>
      document.body.setAttribute('data-asked', String(Number(document.body.dataset['asked'] ?? 0) + 1));
  });
  const asked = async (): Promise<number> => page.evaluate(() => Number(document.body.dataset['asked'] ?? 0));
  const before = await asked();
  await page.locator(`[data-print="${path}"]`).focus();
  await page.keyboard.press('Enter');
  await expect.poll(asked).toBe(before + 1);
  await page.pdf({ path: file, format: 'A4' });
  await page.evaluate(() => dispatchEvent(new Event('afterprint')));
  await expect(page.locator('[data-print]').first()).toBeVisible();
  const pages = pdfPages(file);
  const words = pages.flatMap(({ lines }) => lines.map(({ text }) => text)).join(' ');
  return { words, foot: footOf(pages[0] ?? { width: 0, height: 0, lines: [] }) };
}

test('each paper prints from a file by one press, alone, with its caution', async ({ opened }) => {
  const page = await opened(demo('who-made-this'));
  const notes = await printPaper(page, 'teacher-notes');
  const sheet = await printPaper(page, 'pupil-sheet');
  const cards = await printPaper(page, 'cards');
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
  const cards = await printPaper(page, 'cards');
  expect(cards.words).toContain('Cards to cut out');
  const notes = await printPaper(page, 'teacher-notes');
  expect(notes.words).toContain('The answers, and why');
  expect(notes.words).toContain('Children never knap');
});

test('answers are saved as a file that pitlore scores, without a name, and the safety is in the pack', async ({
  opened,
}) => {
  const page = await opened(demo('who-made-this'));
  await page.getByRole('button', { name: 'Save the answers as a file' }).click();
  await expect(page.getByText('Read a record card first')).toBeVisible();
  await sortByKeyboard(page);
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save the answers as a file' }).click();
  const plays = await (await download).path();
  const plan = join(folder, 'plan.json');
  const compiled = runPitlore(['compile', join(home, 'content/lessons/who-made-this.md')]);
  writeFileSync(plan, compiled.out);
  const scored = runPitlore(['score', plan, plays]);
  expect(scored.code).toBe(0);
  // Everything in one tray is what guessing gets.
  expect(JSON.parse(scored.out)).toMatchObject([{ score: 0 }]);
  expect(Object.keys((JSON.parse(readFileSync(plays, 'utf8')) as object[])[0] ?? {})).toEqual([
    'activity',
    'placed',
  ]);
  await page.getByText('Safety', { exact: true }).click();
  await expect(page.locator('.pack-hazard').first()).toBeVisible();
  await expect(page.getByText('Local law and your employer’s policy come first')).toBeVisible();
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
  await sortByKeyboard(page);
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
