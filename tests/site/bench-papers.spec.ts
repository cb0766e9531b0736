import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { AxeBuilder } from '@axe-core/playwright';
import type { Frame, Page } from '@playwright/test';
import { compileLesson } from '../../shared/compile/index.ts';
import type { PrintAsk } from '../../src/printing/print-view.ts';
import { visitPapers } from '../../src/visit-papers/visit-papers.ts';
import { demoLessons, demoLibrary } from '../demo.ts';
import { expect as expectSoon, test } from './page-under-test.ts';
import { footOf, pdfPages, type PdfPage } from './pdf-text.ts';

/** A visit's papers are made, and laid out in a frame: on a busy machine that takes its time. */
const expect = expectSoon.configure({ timeout: 30_000 });

const FOLDER = 'test-results/papers';
/** What a frame of the Bench leaves for the test: how often it began to print, and what it was told. */
interface Left {
  printsBegun?: number;
  told?: PrintAsk;
}

/** Begins a visit from one of the site's lessons; every frame notes when the browser itself begins to print it. */
async function begin(page: Page, lesson: string): Promise<void> {
  await page.addInitScript(() => {
    const left = globalThis as Left;
    addEventListener('beforeprint', () => {
      left.printsBegun = (left.printsBegun ?? 0) + 1;
    });
    addEventListener('message', ({ data }: MessageEvent<PrintAsk>) => {
      left.told = data;
    });
  });
  await page.goto('/bench/');
  await page.getByLabel('Begin from').locator('option').nth(3).waitFor({ state: 'attached' });
  await page.getByLabel('What is it called?').fill(lesson);
  await page.getByLabel('Begin from').selectOption(lesson);
  await page.getByRole('button', { name: 'Begin', exact: true }).click();
  await page.locator('.papers-list').waitFor();
}

/** The frame that a selector names, to be asked of from within. */
async function frameOf(page: Page, selector: string): Promise<Frame> {
  const frame = await (await page.locator(selector).elementHandle())?.contentFrame();
  if (frame === null || frame === undefined) throw new Error(`no frame ${selector}`);
  return frame;
}

const begun = (frame: Frame): Promise<number> => frame.evaluate(() => (globalThis as Left).printsBegun ?? 0);

/**
 * A browser without a screen never ends what it began to print: to the page it is told that it has. It prints no second
 * time either, so from then on the test counts in its place.
 */
const endPrint = async (frame: Frame): Promise<void> => {
  await frame.evaluate(() => {
    const left = globalThis as Left;
    window.print = () => {
      left.printsBegun = (left.printsBegun ?? 0) + 1;
    };
    dispatchEvent(new Event('afterprint'));
  });
};

/** What the frame was told, printed from a page of its own: a browser makes no PDF of a frame. */
async function printed(page: Page, ask: PrintAsk, name: string): Promise<readonly PdfPage[]> {
  const alone = await page.context().newPage();
  await alone.addInitScript(() => {
    window.print = () => {
      document.body.dataset['asked'] = 'yes';
    };
  });
  await alone.goto('/bench/papers.html');
  await alone.evaluate((told) => window.postMessage(told, '*'), { ...ask, act: 'print' as const });
  await alone.locator('[data-asked]').waitFor();
  mkdirSync(FOLDER, { recursive: true });
  const file = `${FOLDER}/bench-${name}.pdf`;
  writeFileSync(file, await alone.pdf({ preferCSSPageSize: true, printBackground: true }));
  await alone.close();
  return pdfPages(file);
}

const textOf = (pages: readonly PdfPage[]): string =>
  pages.flatMap(({ lines }) => lines.map(({ text }) => text)).join(' ');

test('a paper of the page that is shown prints from its own press, alone and with its foot', async ({
  watched: { page },
}) => {
  await begin(page, 'who-made-this');
  await page.getByRole('button', { name: 'Show the page' }).click();
  const shown = page.frameLocator('.page-seen');
  await shown.getByRole('button', { name: 'Print Pupil sheet' }).press('Enter');
  const frame = await frameOf(page, '.page-seen');
  // The browser says so itself: where the frame may not, it says on its console that it did nothing.
  await expect.poll(() => begun(frame)).toBe(1);
  await expect(shown.locator('.paper')).toHaveCount(1);
  await expect(shown.locator('.pack-paper[data-alone="true"] .paper')).toHaveAttribute(
    'data-part',
    'pupil-sheet',
  );
  const foot = await frame.evaluate(() =>
    document.adoptedStyleSheets
      .flatMap(({ cssRules }) => [...cssRules].map(({ cssText }) => cssText))
      .join(' '),
  );
  expect(foot).toContain('Who made this? · Pupil sheet');
  await endPrint(frame);
  await expect(shown.locator('.paper')).toHaveCount(0);
});

test('the papers of a visit are looked at, counted, and printed alone and together', async ({
  watched: { page },
}) => {
  test.setTimeout(240_000);
  await begin(page, 'in-the-hand');
  const size = page.getByRole('combobox', { name: 'Paper', exact: true });
  await size.selectOption('A4');
  await page.getByRole('button', { name: 'Look at Safety sheet' }).press('Enter');
  const seen = page.frameLocator('.papers-seen');
  await expect(seen.getByText('Stations of this visit')).toBeVisible();
  await expect(page.locator('.papers-head h3')).toBeFocused();
  const frame = await frameOf(page, '.papers-seen');
  const told = (): Promise<PrintAsk> => frame.evaluate(() => (globalThis as Left).told as PrintAsk);

  await page.locator('.papers-head').getByRole('button', { name: 'Print Safety sheet' }).press('Enter');
  await expect.poll(() => begun(frame)).toBe(1);
  const safety = await printed(page, await told(), 'safety');
  await endPrint(frame);
  for (const words of [
    'Safety sheet',
    'Pieces in the hand',
    'polished axe head',
    'Handling',
    'Children never knap',
  ])
    expect(textOf(safety)).toContain(words);
  expect(textOf(safety)).not.toContain('DRAFT');
  expect(textOf(safety)).not.toContain('Look at');
  for (const [index, sheet] of safety.entries()) {
    expect(footOf(sheet)).toContain('In the hand · Safety sheet');
    expect(footOf(sheet)).toContain(`${index + 1} of ${safety.length}`);
    // ISO 216 in points.
    expect(Math.round(sheet.height)).toBe(842);
  }

  await page.getByRole('button', { name: 'Count the sheets' }).press('Enter');
  await expect(page.getByText('Counted for A4: about')).toBeVisible();
  const counts = await page.locator('.papers-list > li').evaluateAll((rows) =>
    rows.map((row) => ({
      name: row.querySelector('h3')?.textContent ?? '',
      sheets: Number(/About (\d+)/.exec(row.textContent ?? '')?.[1]),
    })),
  );
  await page.getByRole('button', { name: 'Print them all together' }).press('Enter');
  await expect.poll(() => begun(frame)).toBe(2);
  const together = await printed(page, await told(), 'together');
  await endPrint(frame);
  const feet = together.map((sheet) => / · (.+) · sheet (\d+)/.exec(footOf(sheet)) ?? []);
  expect(feet.filter(([, , number]) => number === '1').map(([, part]) => part)).toEqual([
    'Contents',
    ...counts.map(({ name }) => name),
  ]);
  for (const { name, sheets } of counts)
    expect(Math.abs(feet.filter(([, part]) => part === name).length - sheets), name).toBeLessThanOrEqual(1);
  const draft = together.filter((sheet) => footOf(sheet).includes('Risk assessment draft'));
  expect(draft.every(({ width, height }) => width > height)).toBe(true);

  // Letter and large print: more sheets, of another size.
  await size.selectOption('Letter');
  await page.getByRole('checkbox', { name: /^Large print/ }).check();
  await page.locator('.papers-list').getByRole('button', { name: 'Print Kit list' }).press('Enter');
  await expect.poll(() => begun(frame)).toBe(3);
  const kit = await printed(page, await told(), 'kit-large');
  await endPrint(frame);
  expect(kit.map(({ height }) => Math.round(height))).toEqual(kit.map(() => 792));
  expect(kit.length).toBeGreaterThan(counts.find(({ name }) => name === 'Kit list')?.sheets ?? Infinity);

  const { violations } = await new AxeBuilder({ page }).include('.lead-papers').analyze();
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html ?? ''}`)).toEqual([]);
  await page.getByRole('button', { name: 'Put away Safety sheet' }).press('Enter');
  await expect(page.locator('[data-look="safety"]')).toBeFocused();

  // What an error stops has no papers, and that is said.
  const file = page.getByLabel('The lesson file as text');
  await file.fill((await file.inputValue()).replace('site: wendle-marsh', 'site: nowhere'));
  await expect(page.getByText('There is nothing to print yet.')).toBeVisible();
  await expect(page.locator('.papers-list')).toHaveCount(0);
});

/** How often each word stands in a text. */
function wordsIn(text: string): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const word of text.split(/[^\p{L}\p{N}]+/u)) counts.set(word, (counts.get(word) ?? 0) + 1);
  return counts;
}

const textsIn = (value: unknown): readonly string[] =>
  typeof value === 'string' || typeof value === 'number'
    ? [String(value)]
    : typeof value === 'object' && value !== null
      ? Object.values(value).flatMap(textsIn)
      : [];

test('no word of the site’s papers is lost from those of the Bench', () => {
  // Needs no browser, but the built site: its pages are what these are held against.
  const lost: string[] = [];
  let compared = 0;
  for (const { id, file, text } of demoLessons) {
    const { plan } = compileLesson(file, text, demoLibrary, id);
    if (plan === null) continue;
    for (const { paper } of visitPapers(plan, demoLibrary).papers) {
      const page = `dist/lessons/${id}/${paper.path}/index.html`;
      if (!existsSync(page)) continue;
      compared += 1;
      const html = readFileSync(page, 'utf8');
      const words = html
        .slice(html.indexOf('<article'), html.indexOf('</article>'))
        .replaceAll(/<header class="title-block">[\s\S]*?<\/header>|<svg[\s\S]*?<\/svg>/g, '')
        .replaceAll(/<p class="(?:paper-how )?not-printed">[\s\S]*?<\/p>/g, '')
        .replaceAll(/<[^>]+>/g, ' ')
        .replaceAll(/&#(\d+);/g, (_, sign: string) => String.fromCodePoint(Number(sign)))
        .replaceAll(/&\w+;/g, ' ');
      const here = wordsIn(textsIn(paper).join(' '));
      for (const word of wordsIn(words).keys())
        if (!here.has(word) && /\p{L}/u.test(word)) lost.push(`${id} ${paper.path}: ${word}`);
    }
  }
  expect(compared).toBeGreaterThan(100);
  expect(lost).toEqual([]);
});
