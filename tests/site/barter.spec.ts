import { execFileSync } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import type { Locator, Page } from '@playwright/test';
import { expect, ready, SIZES, test } from './page-under-test.ts';

const LESSON = '/lessons/round-the-fire/';
const OLDER = '/lessons/what-was-it-worth/';
const CLASS = '/lessons/a-gathering-for-all/';
const FOLDER = 'test-results/papers';

/** A shortest chain of the lesson; its plan is a golden file. */
const CHAIN = [
  { to: 'esk', give: 'antler', take: 'hazelnuts' },
  { to: 'bero', give: 'hazelnuts', take: 'basket' },
  { to: 'dunna', give: 'basket', take: 'axe' },
] as const;

const thing = (page: Page, side: number, good: string): Locator =>
  page.locator('.offer-side').nth(side).locator(`[data-good="${good}"]`).first();

/** Tabs until the target has the focus, as somebody with a keyboard or a switch does. */
async function tabTo(page: Page, target: Locator): Promise<void> {
  for (let tab = 0; tab < 60; tab += 1) {
    if (await target.evaluate((element) => element === document.activeElement)) return;
    await page.keyboard.press('Tab');
  }
  throw new Error('not reached by Tab');
}

for (const size of SIZES) {
  test.describe(`at ${size.name} size`, () => {
    test.use({ viewport: { width: size.width, height: size.height } });

    test('a gathering is finished by keyboard alone', async ({ watched: { page } }) => {
      await page.goto(LESSON);
      await ready(page);
      await page.locator('[data-trader]').first().focus();
      for (const { to, give, take } of CHAIN) {
        // Back to the top of the list, then down to the one that is meant.
        if (to !== 'esk') await page.locator('[data-trader]').first().focus();
        await tabTo(page, page.locator(`[data-trader="${to}"]`));
        await page.keyboard.press('Enter');
        await expect(page.locator(':focus')).toHaveAttribute('data-ask', to);
        await page.keyboard.press('Enter');
        await expect(thing(page, 0, give)).toBeFocused();
        await page.keyboard.press(' ');
        await tabTo(page, thing(page, 1, take));
        await page.keyboard.press('Enter');
        await tabTo(page, page.locator('[data-move="offer"]'));
        await page.keyboard.press('Enter');
        await expect(page.getByRole('status').first()).toContainText('You gave');
      }
      await expect(page.locator('[data-move="read"]')).toBeFocused();
      await page.keyboard.press('Enter');
      await expect(page.getByRole('heading', { name: 'Record card' })).toBeFocused();
      await expect(page.locator('.record-line')).toContainText('after 3 swaps. It cannot be done in fewer.');
    });
  });

  test.describe(`by touch at ${size.name} size`, () => {
    test.use({ viewport: { width: size.width, height: size.height }, hasTouch: true });

    test('a gathering is finished by touch alone, and everything to press is at least 44 px', async ({
      watched: { page },
    }) => {
      await page.goto(LESSON);
      await ready(page);
      for (const { to, give, take } of CHAIN) {
        await page.locator(`[data-trader="${to}"]`).tap();
        await thing(page, 0, give).tap();
        await thing(page, 1, take).tap();
        const small = await page.locator('.barter button, .barter-talk summary').evaluateAll((elements) =>
          elements
            .map((element) => ({ box: element.getBoundingClientRect(), html: element.outerHTML }))
            .filter(({ box }) => box.height < 43.5 || box.width < 43.5)
            .map(({ html }) => html.slice(0, 90)),
        );
        expect(small).toEqual([]);
        await page.locator('[data-move="offer"]').tap();
      }
      await page.locator('[data-move="read"]').tap();
      await expect(page.locator('.chain li')).toHaveCount(3);
    });
  });
}

test('a no has its reason in a sentence, and nothing passes', async ({ watched: { page } }) => {
  await page.goto(LESSON);
  await ready(page);
  await page.locator('[data-trader="esk"]').click();
  await thing(page, 0, 'antler').click();
  await thing(page, 1, 'hide').click();
  await page.locator('[data-move="offer"]').click();
  await expect(page.locator('.offer-answer')).toHaveText('“I would rather keep a hide than have an antler.”');
  await expect(page.getByRole('status').first()).toContainText('Esk: “I would rather keep');
  await expect(page.locator('.chain li')).toHaveCount(0);
  // The answer goes once the offer changes.
  await thing(page, 1, 'hazelnuts').click();
  await expect(page.locator('.offer-answer')).toHaveCount(0);
});

test('a step can be taken back, Escape leaves, and a longer chain is shown a shorter one', async ({
  watched: { page },
}) => {
  await page.goto(LESSON);
  await ready(page);
  await page.locator('[data-trader="ama"]').click();
  await page.keyboard.press('Escape');
  await expect(page.locator('[data-trader="ama"]')).toBeFocused();
  await page.locator('[data-trader="ama"]').click();
  await thing(page, 0, 'antler').click();
  await thing(page, 1, 'flint').click();
  await page.locator('[data-move="offer"]').click();
  await expect(page.locator('.chain li')).toHaveCount(1);
  await page.locator('[data-move="read"]').click();
  await expect(page.locator('.record-line')).toContainText('have not got a hafted axe yet. The fewest is 3.');
  await expect(page.getByRole('list', { name: 'A shorter chain' }).locator('li')).toHaveCount(3);
  await page.getByRole('button', { name: 'Back to the fire' }).click();
  await page.getByRole('button', { name: 'Step back' }).click();
  await expect(page.locator('.chain li')).toHaveCount(0);
});

test('what passed is still there after a reload, and nothing of a person is stored', async ({
  watched: { page },
}) => {
  await page.goto(LESSON);
  await ready(page);
  await page.locator('[data-trader="esk"]').click();
  await thing(page, 0, 'antler').click();
  await thing(page, 1, 'hazelnuts').click();
  await page.locator('[data-move="offer"]').click();
  await page.reload();
  await ready(page);
  await expect(page.locator('.pack .things')).toContainText('a bag of hazelnuts');
  const stored = await page.evaluate(() =>
    Object.keys(localStorage).map((key) => [key, localStorage.getItem(key)] as const),
  );
  expect(stored.map(([key]) => key)).toEqual(['pitlore/1/round-the-fire/barter-1']);
  const kept: unknown = JSON.parse(String(stored[0]?.[1]));
  expect(Object.keys(kept as object).toSorted()).toEqual(['asked', 'isRead', 'swaps', 'way']);
});

test('swaps that no longer fit the lesson are left out, what cannot be read is set aside', async ({
  watched: { page },
}) => {
  const key = 'pitlore/1/round-the-fire/barter-1';
  await page.goto(LESSON);
  await page.evaluate(([name, text]) => localStorage.setItem(name, text), [
    key,
    '{"way":"alone","asked":[],"isRead":true,"swaps":[{"with":"esk","give":["pot"],"take":["axe"]}]}',
  ] as const);
  await page.reload();
  await ready(page);
  await expect(page.locator('.chain li')).toHaveCount(0);
  await expect(page.locator('[data-trader="esk"]')).toBeVisible();
  await page.evaluate(([name, text]) => localStorage.setItem(name, text), [
    key,
    '{"way":"sideways"}',
  ] as const);
  await page.reload();
  await ready(page);
  expect(await page.evaluate((name) => localStorage.getItem(`${name}/set-aside`), key)).toBe(
    '{"way":"sideways"}',
  );
});

test('a gift opens a door, two go for one, and the oldest see hours, rings and a token', async ({
  watched: { page },
}) => {
  await page.goto(OLDER);
  await ready(page);
  const offer = page.locator('[data-move="offer"]');
  await page.locator('[data-trader="ama"]').click();
  await thing(page, 0, 'pick').click();
  await expect(offer).toHaveText('Give it, and ask for nothing');
  await offer.click();
  await expect(page.locator('.trader-owes')).toContainText('Owes you a jet bead');
  await page.locator('[data-trader="ama"]').click();
  await thing(page, 1, 'bead').click();
  await offer.click();
  await expect(page.locator('.offer-answer')).toContainText('Come back later');
  await thing(page, 1, 'bead').click();
  await thing(page, 0, 'grain').click();
  await thing(page, 1, 'hide').click();
  await offer.click();
  await page.locator('[data-trader="cale"]').click();
  await thing(page, 0, 'hide').click();
  const knives = page.locator('.offer-side').nth(1).locator('[data-good="knife"]');
  await knives.nth(1).click();
  await expect(knives.nth(0)).toHaveAttribute('aria-pressed', 'true');
  await offer.click();
  await page.locator('[data-trader="esk"]').click();
  await page.locator('.offer-side').nth(0).locator('[data-good="knife"]').nth(1).click();
  await thing(page, 1, 'axe').click();
  await offer.click();
  await page.locator('[data-move="read"]').click();
  await expect(page.locator('.record-line')).toContainText('after 4 swaps. It cannot be done in fewer.');
  for (const title of ['Fair by hours?', 'A ring nobody asked for', 'What would a shared token change?'])
    await expect(page.getByRole('heading', { name: title })).toBeVisible();
  await expect(page.locator('.hours')).toContainText('26 h');
});

test('hands up: counts for whom to go to, then there', async ({ watched: { page } }) => {
  await page.goto(LESSON);
  await ready(page);
  await page.getByRole('button', { name: 'Hands up' }).click();
  await page.getByLabel('Hands for Ama', { exact: true }).fill('9');
  await page.getByLabel('Hands for Cale', { exact: true }).fill('17');
  await page.getByRole('button', { name: 'Go where most hands are' }).click();
  await expect(page.locator('.trader[data-state="open"]')).toContainText('Cale');
});

test('a class of any size has its cards, its record, and prints nothing else', async ({
  watched: { page },
}) => {
  await page.goto(CLASS);
  await ready(page);
  await expect(page.locator('.dealt .want-card')).toHaveCount(28);
  for (const pupils of [4, 9, 36]) {
    await page.getByLabel(/^How many pupils/).fill(String(pupils));
    await page.locator('[data-move="deal"]').click();
    await expect(page.locator('.dealt .want-card')).toHaveCount(pupils);
  }
  await page.locator('[data-move="read"]').click();
  await expect(page.locator('.record-line')).toHaveText('Key in the hands first.');
  await page.getByRole('button', { name: 'Back to the hands' }).click();
  await page.getByLabel('Hands for a gain of 3', { exact: true }).fill('37');
  await page.locator('[data-move="read"]').click();
  await expect(page.locator('.record-line')).toContainText('more hands than pupils');
  await page.getByRole('button', { name: 'Back to the hands' }).click();
  await page.getByLabel('Hands for a gain of 3', { exact: true }).fill('30');
  await page.getByLabel('Hands for a gain of 0', { exact: true }).fill('6');
  await page.locator('[data-move="read"]').click();
  await expect(page.locator('.record-line')).toContainText('The class gained 90 of');
  await expect(page.locator('.record-line')).toContainText('30 of 36 went home better off.');
  await page.reload();
  await ready(page);
  await expect(page.locator('.dealt .want-card')).toHaveCount(36);
  await page.emulateMedia({ media: 'print' });
  await expect(page.locator('.want-card').first()).toBeVisible();
  await expect(page.locator('.rod')).toBeHidden();
  await expect(page.locator('.record-card')).toBeHidden();
  await expect(page.locator('.prose').first()).toBeHidden();
});

const PAPERS = ['teacher-notes', 'cards', 'pupil-sheet', 'answers'] as const;

for (const lesson of ['round-the-fire', 'what-was-it-worth', 'a-gathering-for-all']) {
  test(`every paper of ${lesson} prints with its foot on every page`, async ({ watched: { page } }) => {
    mkdirSync(FOLDER, { recursive: true });
    for (const paper of PAPERS) {
      await page.goto(`/lessons/${lesson}/${paper}/`);
      const file = `${FOLDER}/${lesson}-${paper}.pdf`;
      writeFileSync(file, await page.pdf({ format: 'A4', tagged: true, printBackground: true }));
      const text = execFileSync('pdftotext', ['-layout', file, '-'], { encoding: 'utf8' });
      const sheets = text.split('\f').filter((sheet) => sheet.trim() !== '');
      for (const [index, sheet] of sheets.entries())
        expect(sheet).toContain(`${index + 1} of ${sheets.length}`);
      if (paper === 'cards')
        expect(text).toContain(lesson === 'a-gathering-for-all' ? 'Cards for 28 pupils' : 'Dunna');
      if (paper === 'teacher-notes') expect(text).toContain("this game's own rule");
      expect(text).not.toMatch(/\bprice\b/i);
    }
  });
}
