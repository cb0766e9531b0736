import { execFileSync } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import { AxeBuilder } from '@axe-core/playwright';
import { expect, ready, SIZES, test } from './page-under-test.ts';

const LESSON = '/lessons/in-the-hand/';
const PIECES = 6;

for (const size of SIZES) {
  test.describe(`at ${size.name} size`, () => {
    test.use({ viewport: { width: size.width, height: size.height } });

    test('a handling session is gone through by keyboard alone, and has no score', async ({
      watched: { page },
    }) => {
      await page.goto(LESSON);
      await ready(page);
      const handle = page.locator('.handle');
      for (let piece = 1; piece <= PIECES; piece += 1) {
        await expect(handle.locator('.handle-place[aria-pressed="true"]')).toHaveAttribute(
          'data-piece',
          (await handle
            .locator('.handle-place')
            .nth(piece - 1)
            .getAttribute('data-piece')) ?? '',
        );
        const first = handle.locator('[data-sense="look"]');
        await first.focus();
        await page.keyboard.press(piece % 2 === 0 ? 'Enter' : ' ');
        await expect(first).toHaveAttribute('aria-pressed', 'true');
        await handle.locator('[data-move="pass"]').focus();
        await page.keyboard.press('Enter');
        const said = piece === PIECES ? 'last piece' : `Piece ${piece + 1} of ${PIECES}`;
        await expect(handle.getByRole('status')).toContainText(said);
      }
      await handle.locator('[data-choice="P3-127"]').focus();
      await page.keyboard.press(' ');
      await handle.locator('[data-move="read"]').focus();
      await page.keyboard.press('Enter');
      await expect(handle.getByRole('heading', { name: 'Record card' })).toBeFocused();
      await expect(handle.locator('.record tbody tr')).toHaveCount(PIECES);
      await expect(handle.locator('.record-line')).toContainText(`${PIECES} of ${PIECES}`);
      await expect(handle).toContainText('There is no score');
      await expect(handle).toContainText('Grooved Ware sherd');
      await expect(handle.locator('.mark')).toHaveCount(0);
    });
  });

  test.describe(`by touch at ${size.name} size`, () => {
    test.use({ viewport: { width: size.width, height: size.height }, hasTouch: true });

    test('pieces are taken from the tray, and hands keyed in for one to ask about', async ({
      watched: { page },
    }) => {
      await page.goto(LESSON);
      await ready(page);
      const handle = page.locator('.handle');
      await handle.locator('.handle-place').nth(2).tap();
      await handle.locator('[data-sense="feel"]').tap();
      await handle.getByRole('button', { name: 'Hands up' }).tap();
      const more = handle.getByRole('button', { name: 'One more hand for Piece 3' });
      await more.tap();
      await more.tap();
      await handle.locator('[data-move="read"]').tap();
      await expect(handle.locator('.handle-asked')).toHaveText(/Piece 3, Grooved Ware sherd: 2 hands/);
    });
  });
}

test('what is only looked at has nothing to feel; what was met is there after a reload', async ({
  watched: { page },
}) => {
  await page.goto(LESSON);
  await ready(page);
  const handle = page.locator('.handle');
  await handle.locator('.handle-place').last().click();
  await expect(handle.locator('.handle-hold')).toContainText('Do not touch');
  await expect(handle.locator('[data-sense]')).toHaveCount(1);
  await handle.locator('[data-sense="look"]').click();
  await page.reload();
  await ready(page);
  await expect(handle.locator('.handle-place').last()).toHaveAttribute('data-met', 'true');
  await expect(handle.locator('.handle-place').last()).toHaveAttribute('aria-pressed', 'true');
  await handle.locator('[data-move="read"]').click();
  await handle.getByRole('button', { name: 'Start again' }).click();
  await handle.getByRole('button', { name: 'Clear it' }).click();
  await expect(handle.locator('.handle-place[data-met="true"]')).toHaveCount(0);
});

test('each age has its own page, with its own words', async ({ watched: { page } }) => {
  await page.goto(`${LESSON}ages/11-14/`);
  await ready(page);
  await page.locator('.handle-place').nth(4).click();
  await expect(page.locator('.handle-hold')).toContainText('as a haft would');
  await page.goto(`${LESSON}ages/5-7/`);
  await ready(page);
  await page.locator('.handle-place').nth(4).click();
  await expect(page.locator('.handle-hold')).toContainText('On your flat hand');
});

test('nothing is too small, hard to reach or without a name, at the tray and on the record', async ({
  watched: { page },
}) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await page.goto(LESSON);
  await ready(page);
  const check = async (): Promise<void> => {
    const small = await page.locator('.handle button, .talk button').evaluateAll((elements) =>
      elements
        .map((element) => ({ box: element.getBoundingClientRect(), html: element.outerHTML.slice(0, 90) }))
        .filter(({ box }) => box.width > 0 && (box.height < 43.5 || box.width < 43.5))
        .map(({ html }) => html),
    );
    expect(small).toEqual([]);
    const { violations } = await new AxeBuilder({ page }).analyze();
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html ?? ''}`)).toEqual([]);
  };
  for (const island of ['.handle', '.talk'])
    await page.locator(island).getByRole('button', { name: 'Hands up' }).click();
  await check();
  await page.locator('.handle [data-sense="look"]').click();
  await page.locator('.talk .hands-count').first().fill('9');
  await check();
  for (const island of ['.handle', '.talk']) await page.locator(`${island} [data-move="read"]`).click();
  await check();
});

const FOLDER = 'test-results/papers';
for (const { format, width, height } of [
  { format: 'A4', width: 842, height: 595 },
  { format: 'Letter', width: 792, height: 612 },
] as const) {
  test(`on ${format} the card is one sheet, and the poster one sheet on its side`, async ({
    watched: { page },
  }) => {
    mkdirSync(FOLDER, { recursive: true });
    const printed = async (paper: string): Promise<{ readonly info: string; readonly text: string }> => {
      await page.goto(`${LESSON}${paper}/`);
      await page.evaluate(() => document.fonts.ready);
      const file = `${FOLDER}/${paper}-${format}.pdf`;
      writeFileSync(file, await page.pdf({ format, printBackground: true }));
      return {
        info: execFileSync('pdfinfo', [file], { encoding: 'utf8' }),
        text: execFileSync('pdftotext', ['-layout', file, '-'], { encoding: 'utf8' }).replace(/\s+/g, ' '),
      };
    };
    const card = await printed('helper-card');
    expect(card.info).toMatch(/Pages:\s+1\n/);
    for (const words of [
      'Who must be there',
      'If a piece breaks',
      'Soap and water',
      '2 other adults',
      'polished axe head',
    ])
      expect(card.text).toContain(words);
    const poster = await printed('table-poster');
    expect(poster.info).toMatch(/Pages:\s+1\n/);
    const [, across, down] = /Page size:\s+([\d.]+) x ([\d.]+)/.exec(poster.info) ?? [];
    expect([Math.floor(Number(across)), Math.floor(Number(down))]).toEqual([width, height]);
    for (const words of ['Low over the tray', 'Wash your hands', 'look only', 'Children never knap'])
      expect(poster.text).toContain(words);
  });
}

test('a lesson that hands nothing out has neither card nor poster', async ({ watched: { page } }) => {
  await page.goto('/lessons/two-pits/');
  await expect(page.locator('nav.papers')).toContainText('Pupil sheet');
  await expect(page.locator('nav.papers')).not.toContainText('Table poster');
});
