import { AxeBuilder } from '@axe-core/playwright';
import { expect, ready, SIZES, test } from './page-under-test.ts';

const LESSONS = [
  { path: '/lessons/order-of-an-axe/', cards: 12 },
  { path: '/lessons/stone-to-axe/', cards: 5 },
] as const;

for (const size of SIZES) {
  test.describe(`at ${size.name} size`, () => {
    test.use({ viewport: { width: size.width, height: size.height } });

    test('an order is finished by keyboard alone', async ({ watched: { page } }) => {
      await page.goto(LESSONS[0].path);
      await ready(page);
      await page.locator('.step-cards [data-card]').first().focus();
      for (let laid = 0; laid < LESSONS[0].cards; laid += 1) {
        await page.keyboard.press(laid % 2 === 0 ? 'Enter' : ' ');
        await expect(page.locator('.line-card[data-state="empty"]').first()).toBeFocused();
        await page.keyboard.press('Enter');
        await expect(page.getByRole('status').first()).toContainText(`lies at place ${laid + 1}`);
        await expect(page.locator(':focus')).not.toHaveClass(/line-card/);
      }
      const second = page.locator('.line-place').nth(1);
      const card = await second.locator('.step-name').textContent();
      await second.getByRole('button', { name: /earlier/ }).focus();
      await page.keyboard.press('Enter');
      await expect(page.locator('.line-place').first().locator('.step-name')).toHaveText(card ?? '');
      await expect(
        page
          .locator('.line-place')
          .first()
          .getByRole('button', { name: /earlier/ }),
      ).toBeFocused();
      await page.locator('[data-move="read"]').focus();
      await page.keyboard.press('Enter');
      await expect(page.getByRole('heading', { name: 'Record card' })).toBeFocused();
      await expect(page.locator('.record tbody tr')).toHaveCount(LESSONS[0].cards);
    });
  });

  test.describe(`by touch at ${size.name} size`, () => {
    test.use({ viewport: { width: size.width, height: size.height }, hasTouch: true });

    test('an order is finished by touch alone', async ({ watched: { page } }) => {
      await page.goto(LESSONS[1].path);
      await ready(page);
      // The right order, whatever was dealt.
      const names = [
        'Find a big flint',
        'Make a handle',
        'Chip it into shape',
        'Rub it smooth',
        'Put the axe in the handle',
      ];
      for (const [index, name] of names.entries()) {
        await page.locator('.step-cards').getByRole('button', { name }).tap();
        await page.locator('.line-card').nth(index).tap();
      }
      await page.locator('[data-move="read"]').tap();
      await expect(page.locator('.record-line')).toContainText('it can be made in this order');
      await expect(page.locator('.mark[data-mark="other"]')).toHaveCount(0);
      await expect(page.locator('.free')).toContainText('neither needs the other');
    });
  });
}

test('what was laid is still there after a reload; Escape and Step back undo', async ({
  watched: { page },
}) => {
  await page.goto(LESSONS[1].path);
  await ready(page);
  const first = page.locator('.step-cards [data-card]').first();
  await first.click();
  await page.keyboard.press('Escape');
  await expect(first).toHaveAttribute('aria-pressed', 'false');
  await first.click();
  await page.locator('.line-card').nth(2).click();
  await page.reload();
  await ready(page);
  await expect(page.locator('.line-place').nth(2)).toHaveAttribute('data-state', 'laid');
  await page.locator('.step-cards [data-card]').first().click();
  await page.locator('.line-card').nth(2).click();
  await expect(page.locator('.line-place').nth(3)).toHaveAttribute('data-state', 'laid');
  await page.getByRole('button', { name: 'Step back' }).click();
  await expect(page.locator('.line-place').nth(3)).toHaveAttribute('data-state', 'empty');
});

test('hands up: the card with most hands is laid next, and a tie is asked again', async ({
  watched: { page },
}) => {
  await page.goto(LESSONS[1].path);
  await ready(page);
  await page.getByRole('button', { name: 'Hands up' }).click();
  const lay = page.getByRole('button', { name: 'Lay the card with most hands' });
  for (let left = LESSONS[1].cards; left > 1; left -= 1) {
    await page.locator('.hands-count').nth(0).fill('12');
    await page.locator('.hands-count').nth(1).fill('12');
    await lay.click();
    await expect(page.getByRole('status').first()).toContainText('as many hands');
    await page.locator('.hands-count').nth(1).fill('18');
    await lay.click();
  }
  await page.locator('.hands-count').nth(0).fill('30');
  await lay.click();
  await page.locator('[data-move="read"]').click();
  await expect(page.locator('.record tbody tr')).toHaveCount(LESSONS[1].cards);
});

for (const { path, cards } of LESSONS) {
  test(`${path} on paper has a card, a place and an answer for each step`, async ({ watched: { page } }) => {
    await page.goto(`${path}cards/`);
    // Behind each stands its back, for printing on both sides.
    await expect(page.locator('.card:not(.card-back)')).toHaveCount(cards);
    await page.goto(`${path}pupil-sheet/`);
    await expect(page.locator('.paper-line > li')).toHaveCount(cards);
    await page.goto(`${path}answers/`);
    await expect(page.locator('.answers tbody tr')).toHaveCount(cards);
    await expect(page.locator('.free')).toContainText('neither needs the other');
  });
}

test('with a card in the hand, and on the record card, nothing is too small or hard to reach', async ({
  watched: { page },
}) => {
  test.setTimeout(120_000);
  await page.setViewportSize({ width: 390, height: 844 });
  for (const { path, cards } of LESSONS) {
    await page.goto(path);
    await ready(page);
    const check = async (): Promise<void> => {
      const small = await page.locator('.order button, .order summary').evaluateAll((elements) =>
        elements
          .map((element) => ({ box: element.getBoundingClientRect(), html: element.outerHTML.slice(0, 90) }))
          .filter(({ box }) => box.width > 0 && (box.height < 43.5 || box.width < 43.5))
          .map(({ html }) => html),
      );
      expect(small).toEqual([]);
      const { violations } = await new AxeBuilder({ page }).analyze();
      expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html ?? ''}`)).toEqual([]);
    };
    for (let laid = 0; laid < cards; laid += 1) {
      await page.locator('.step-cards [data-card]').first().click();
      if (laid === 2) await check();
      await page.locator('.line-card[data-state="empty"]').first().click();
    }
    await check();
    await page.locator('[data-move="read"]').click();
    await check();
  }
});
