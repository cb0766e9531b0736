import { mkdirSync, writeFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { expect, test } from './page-under-test.ts';
import { footOf, isFoot, pdfPages, type PdfPage } from './pdf-text.ts';

/** Papers that name every find of a lesson. */
const FINDS = ['teacher-notes', 'cards', 'pupil-sheet', 'answers'] as const;
const OTHERS = ['safety', 'risk-assessment', 'station-cards', 'signs', 'kit-list', 'evaluation'] as const;
const FOLDER = 'test-results/papers';
/** Points: ISO 216 A4 and the American letter. */
const SIZES = { A4: [595, 842], Letter: [612, 792] } as const;
const FORMATS = ['A4', 'Letter'] as const;

/** Prints the page as it stands and reads it back. */
async function printed(
  page: Page,
  name: string,
  format: (typeof FORMATS)[number],
): Promise<readonly PdfPage[]> {
  mkdirSync(FOLDER, { recursive: true });
  const file = `${FOLDER}/${name}-${format}.pdf`;
  await page.evaluate(() => document.fonts.ready.then(() => true));
  writeFileSync(
    file,
    await page.pdf({ format, preferCSSPageSize: true, tagged: true, outline: true, printBackground: true }),
  );
  return pdfPages(file);
}

const textOf = (pages: readonly PdfPage[]): string =>
  pages.flatMap(({ lines }) => lines.map(({ text }) => text)).join('\n');

/** Headings with nothing beside or beneath them on their page but its foot; a row of a table has its other cells. */
function headingsAtFoot(pages: readonly PdfPage[], headings: ReadonlySet<string>): readonly string[] {
  return pages.flatMap((page, index) => {
    const lines = page.lines.filter((line) => !isFoot(page, line));
    return lines
      .filter(
        (line) =>
          headings.has(line.text) && !lines.some((other) => other !== line && other.bottom > line.top + 2),
      )
      .map(({ text }) => `page ${index + 1}: ${text}`);
  });
}

const headingsOf = async (page: Page): Promise<ReadonlySet<string>> =>
  new Set(
    (await page.locator('.paper :is(h1, h2, h3, .hazard-name)').allInnerTexts()).map((text) =>
      text.replaceAll(/\s+/g, ' ').trim(),
    ),
  );

test('a heading alone at the foot of a page is found', () => {
  const line = (text: string, top: number) => ({ text, top, bottom: top + 15 });
  const page = { width: 595, height: 842, lines: [line('Text', 100), line('Kit', 600), line('1 of 2', 810)] };
  expect(headingsAtFoot([page], new Set(['Kit']))).toEqual(['page 1: Kit']);
  expect(
    headingsAtFoot([{ ...page, lines: [...page.lines, line('a rope', 620)] }], new Set(['Kit'])),
  ).toEqual([]);
});

for (const format of FORMATS) {
  test(`every paper prints on ${format} with its foot`, async ({ watched: { page } }) => {
    for (const paper of [...FINDS, ...OTHERS]) {
      await page.goto(`/lessons/who-made-this/${paper}/`);
      const pages = await printed(page, paper, format);
      for (const [index, sheet] of pages.entries()) {
        const [short, long] = SIZES[format];
        const sides = [sheet.width, sheet.height].toSorted((a, b) => a - b);
        expect(Math.abs((sides[0] ?? 0) - short), `${paper}: ${sides.join(' × ')}`).toBeLessThan(2);
        expect(Math.abs((sides[1] ?? 0) - long)).toBeLessThan(2);
        expect(footOf(sheet), `${paper}, page ${index + 1}`).toContain(`${index + 1} of ${pages.length}`);
        expect(footOf(sheet)).toContain('Who made this? ·');
      }
      expect(headingsAtFoot(pages, await headingsOf(page)), paper).toEqual([]);
      expect(textOf(pages)).not.toContain('Skip to the lesson');
    }
  });
}

test('papers of finds name every find', async ({ watched: { page } }) => {
  for (const paper of FINDS) {
    await page.goto(`/lessons/who-made-this/${paper}/`);
    const text = textOf(await printed(page, paper, 'A4'));
    for (const number of [165, 166, 168, 171, 173, 174, 175, 176, 177, 178])
      expect(text, paper).toContain(String(number));
  }
});

for (const format of FORMATS) {
  for (const lesson of ['order-of-an-axe', 'who-made-this'] as const) {
    test(`the pack of ${lesson} on ${format}: each part in its order, counted by sheets and over the whole`, async ({
      watched: { page },
    }) => {
      await page.goto(`/lessons/${lesson}/print-pack/`);
      const ids = await page.locator('[id]').evaluateAll((all) => all.map(({ id }) => id));
      expect(ids.filter((id, index) => ids.indexOf(id) !== index)).toEqual([]);
      const pages = await printed(page, `pack-${lesson}`, format);
      const names = ['Contents', ...(await page.locator('.contents tbody th').allInnerTexts())];
      expect(names).toEqual([
        'Contents',
        'Teacher notes',
        'Pupil sheet',
        'Cards to cut out',
        'Answers',
        'Safety sheet',
        'Risk assessment draft',
        'Station cards',
        'Signs',
        'Kit list',
        'Evaluation slips',
      ]);
      const feet = pages.map((sheet, index) => {
        expect(footOf(sheet)).toContain(`${index + 1} of ${pages.length}`);
        const [, part = '', number = ''] = / · (.+) · sheet (\d+)/.exec(footOf(sheet)) ?? [];
        return { part, number: Number(number) };
      });
      // Parts follow one another as the contents say, and each counts its own sheets from 1.
      expect(feet.filter(({ number }) => number === 1).map(({ part }) => part)).toEqual(names);
      for (const [index, { part, number }] of feet.entries()) {
        const before = feet[index - 1];
        expect(number).toBe(before?.part === part ? before.number + 1 : 1);
      }
      const text = textOf(pages);
      // Where safety figures come from, and that the draft is one.
      expect(text).toContain('NSPCC Learning');
      expect(text).toContain('DRAFT. Not valid until');
      expect(headingsAtFoot(pages, await headingsOf(page))).toEqual([]);
    });
  }
}

test('a lesson without cards has none in its pack', async ({ watched: { page } }) => {
  await page.goto('/lessons/hours-in-an-axe/print-pack/');
  const names = await page.locator('.contents tbody th').allInnerTexts();
  expect(names).toContain('Pupil sheet');
  expect(names).not.toContain('Cards to cut out');
});

test('large print is 18 point or more throughout, without a script', async ({ browser, baseURL }) => {
  const context = await browser.newContext({ javaScriptEnabled: false, baseURL: baseURL ?? '' });
  const page = await context.newPage();
  await page.goto('/lessons/order-of-an-axe/print-pack/');
  await page.getByLabel('Large print').check();
  await page.emulateMedia({ media: 'print' });
  const small = await page.locator('.print-pack *').evaluateAll((elements) =>
    elements
      .filter((element) =>
        [...element.childNodes].some(
          ({ nodeType, textContent }) => nodeType === 3 && (textContent ?? '').trim() !== '',
        ),
      )
      .filter((element) => element.getClientRects().length > 0)
      // 18 points are 24 px.
      .filter((element) => Number.parseFloat(getComputedStyle(element).fontSize) < 24)
      .map((element) => `${getComputedStyle(element).fontSize} ${element.outerHTML.slice(0, 80)}`),
  );
  expect(small).toEqual([]);
  const pages = await printed(page, 'pack-large', 'A4');
  expect(footOf(pages[0] ?? { width: 0, height: 0, lines: [] })).toContain(`1 of ${pages.length}`);
  await context.close();
});

test('a card’s back lies behind it when the sheet is turned on its long edge', async ({
  watched: { page },
}) => {
  await page.goto('/lessons/who-made-this/cards/');
  await page.getByRole('checkbox', { name: 'Backs for the cards' }).check();
  await page.emulateMedia({ media: 'print' });
  const places = (selector: string) =>
    page.locator(selector).evaluateAll((sections) =>
      sections.map((section) => {
        const { top, left, width } = section.getBoundingClientRect();
        return [...section.querySelectorAll('.card')].map((card) => {
          const box = card.getBoundingClientRect();
          return {
            down: Math.round(box.top - top),
            left: Math.round(box.left - left),
            right: Math.round(left + width - box.right),
            height: Math.round(box.height),
          };
        });
      }),
    );
  const fronts = await places('.card-page');
  const backs = await places('.card-backs:not(p)');
  expect(fronts.flat().length).toBe(10);
  for (const [sheet, cards] of fronts.entries()) {
    expect(backs[sheet]?.length).toBe(cards.length);
    for (const [index, card] of cards.entries()) {
      const back = backs[sheet]?.[index];
      expect(back).toMatchObject({ down: card.down, height: card.height });
      expect(Math.abs((back?.right ?? -9) - card.left)).toBeLessThanOrEqual(1);
    }
  }
  // Each page of cards stands on the right, its back behind it: 3 and 4, 5 and 6.
  const pages = await printed(page, 'cards-backs', 'A4');
  const isBack = pages.map(({ lines }) => lines.some(({ text }) => text.startsWith('Set')));
  expect(isBack).toEqual([false, false, false, true, false, true]);
});
