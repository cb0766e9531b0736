import { expect, ready, SIZES, test } from './page-under-test.ts';

const LESSON = '/lessons/in-the-hand/';

for (const size of SIZES) {
  test.describe(`at ${size.name} size`, () => {
    test.use({ viewport: { width: size.width, height: size.height } });

    test('a talk is gone through by keyboard alone, and nobody is told they are right', async ({
      watched: { page },
    }) => {
      await page.goto(LESSON);
      await ready(page);
      const talk = page.locator('.talk');
      await expect(talk.locator('.talk-voices li')).toHaveCount(4);
      for (const [asks, choice] of [
        ['before', 'a'],
        ['weighs', 'b'],
        ['after', 'c'],
      ] as const) {
        const one = talk.locator(`[data-asks="${asks}"] [data-choice="${choice}"]`);
        await one.focus();
        await page.keyboard.press(asks === 'weighs' ? 'Enter' : ' ');
        await expect(one).toHaveAttribute('aria-pressed', 'true');
        await expect(one).toBeFocused();
      }
      await talk.locator('[data-move="read"]').focus();
      await page.keyboard.press('Enter');
      await expect(talk.getByRole('heading', { name: 'Record card' })).toBeFocused();
      await expect(talk.locator('.record-card')).toContainText('Before: They threw it away.');
      await expect(talk.locator('.record-card')).toContainText('After: It was a bit of both.');
      await expect(talk.locator('.record-card')).toContainText('You moved.');
      await expect(talk.locator('.record-card')).toContainText('there is no score');
      await expect(talk.locator('.mark')).toHaveCount(0);
      await expect(talk.locator('.record-card')).not.toContainText(/right|wrong|correct/i);
    });
  });

  test.describe(`by touch at ${size.name} size`, () => {
    test.use({ viewport: { width: size.width, height: size.height }, hasTouch: true });

    test('hands before and after: how many moved at least, where the counts can be compared', async ({
      watched: { page },
    }) => {
      await page.goto(LESSON);
      await ready(page);
      const talk = page.locator('.talk');
      await talk.getByRole('button', { name: 'Hands up' }).tap();
      const key = async (asks: string, counts: readonly number[]): Promise<void> => {
        for (const [place, count] of counts.entries())
          await talk.locator(`[data-asks="${asks}"] .hands-count`).nth(place).fill(String(count));
      };
      await key('before', [10, 12, 5]);
      await key('after', [6, 12, 8]);
      await talk
        .locator('[data-asks="after"]')
        .getByRole('button', { name: /^One more hand/ })
        .last()
        .tap();
      await talk.locator('[data-move="read"]').tap();
      await expect(talk.locator('.record-line')).toHaveText('At least 4 hands moved.');
      await expect(talk.locator('.record tbody tr').first()).toContainText('10');
      await talk.getByRole('button', { name: 'Back to the talk' }).tap();
      await key('after', [6, 12, 8]);
      await talk.locator('[data-move="read"]').tap();
      await expect(talk.locator('.record-line')).toContainText('not of as many hands');
    });
  });
}

test('a stand is kept over a reload, and thrown away when asked', async ({ watched: { page } }) => {
  await page.goto(LESSON);
  await ready(page);
  const one = page.locator('.talk [data-asks="before"] [data-choice="b"]');
  await one.click();
  await page.reload();
  await ready(page);
  await expect(one).toHaveAttribute('aria-pressed', 'true');
  await page.locator('.talk [data-move="read"]').click();
  await page.locator('.talk').getByRole('button', { name: 'Start again' }).click();
  await page.locator('.talk').getByRole('button', { name: 'Clear it' }).click();
  await expect(page.locator('.talk [aria-pressed="true"][data-choice]')).toHaveCount(0);
});

test('on paper there is room to stand before and after, and every voice says where it comes from', async ({
  watched: { page },
}) => {
  await page.goto(`${LESSON}pupil-sheet/`);
  // Three stances before, three pieces of evidence, three stances after.
  await expect(page.locator('.tick-list li')).toHaveCount(9);
  await page.goto(`${LESSON}answers/`);
  await expect(page.locator('.paper')).toContainText('Garrow');
  await expect(page.locator('.paper')).toContainText('invented for this lesson');
  await expect(page.locator('.paper')).toContainText('said in the trade; no source');
});
