import type { Locator, Page } from '@playwright/test';
import { expect, ready, SIZES, test } from './page-under-test.ts';

const YOUNGER = '/lessons/hours-in-an-axe/';
const OLDER = '/lessons/how-sure-are-you/';

const open = async (page: Page, path: string): Promise<void> => {
  await page.goto(path);
  await ready(page);
};
const readButton = (estimate: Locator): Locator => estimate.locator('[data-move="read"]');
const heading = (estimate: Locator): Locator => estimate.getByRole('heading', { name: 'Record card' });

for (const size of SIZES) {
  test.describe(`at ${size.name} size`, () => {
    test.use({ viewport: { width: size.width, height: size.height } });

    test('a choice is made, read and changed by keyboard alone', async ({ watched: { page } }) => {
      await open(page, YOUNGER);
      const estimate = page.locator('#estimate-1');
      await estimate.locator('.choice').first().focus();
      await page.keyboard.press('Tab');
      await page.keyboard.press('Enter');
      await expect(estimate.getByRole('status')).toContainText('is chosen');
      await page.keyboard.press('Tab');
      await page.keyboard.press('Tab');
      while (!(await readButton(estimate).evaluate((button) => button === document.activeElement)))
        await page.keyboard.press('Tab');
      await page.keyboard.press(' ');
      await expect(heading(estimate)).toBeFocused();
      const next = estimate.getByRole('button', { name: 'Step on: Size' });
      await next.focus();
      const before = await estimate.locator('.levers-text').textContent();
      await page.keyboard.press('Enter');
      await expect(estimate.locator('.levers-text')).not.toHaveText(before ?? '');
      await expect(estimate.locator('.levers-text')).toContainText('times the first');
    });

    test('a least and a most are set by arrow keys alone', async ({ watched: { page } }) => {
      await open(page, OLDER);
      const estimate = page.locator('#estimate-1');
      const marks = estimate.locator('.line-range');
      await marks.nth(0).focus();
      for (let press = 0; press < 3; press += 1) await page.keyboard.press('ArrowLeft');
      await expect(marks.nth(0)).toHaveAttribute('aria-valuetext', /hour/);
      await marks.nth(1).focus();
      for (let press = 0; press < 8; press += 1) await page.keyboard.press('ArrowRight');
      await expect(estimate.getByRole('status')).toContainText('Your answer');
      await readButton(estimate).focus();
      await page.keyboard.press('Enter');
      await expect(heading(estimate)).toBeFocused();
      await expect(estimate.locator('.record-line')).toContainText('in 100 of the cases');
    });
  });

  test.describe(`by touch at ${size.name} size`, () => {
    test.use({ viewport: { width: size.width, height: size.height }, hasTouch: true });

    test('a number is put on the line, read and compared by touch alone', async ({ watched: { page } }) => {
      await open(page, YOUNGER);
      const estimate = page.locator('#estimate-2');
      await estimate.getByRole('button', { name: 'Say a number' }).tap();
      await estimate.locator('.line-range').tap({ position: { x: 60, y: 20 } });
      await estimate.locator('.mark-steps .press').nth(1).tap();
      await expect(estimate.locator('.mark-number')).not.toHaveValue('');
      await readButton(estimate).tap();
      await expect(heading(estimate)).toBeVisible();
      await estimate.getByRole('button', { name: 'Step on: Stone' }).tap();
      await expect(estimate.locator('.levers-text')).toContainText('times the first');
    });
  });
}

test('the picture says in words what it draws, every trial among them', async ({ watched: { page } }) => {
  await open(page, YOUNGER);
  const estimate = page.locator('#estimate-2');
  await estimate.getByRole('button', { name: 'Say a number' }).click();
  await estimate.locator('.mark-number').fill('60');
  await estimate.locator('.mark-number').press('Enter');
  await readButton(estimate).click();
  const rows = estimate.locator('.picture-rows > li');
  await expect(rows.nth(0)).toContainText('You: 60 hours');
  await expect(rows.nth(1)).toContainText('The model: 6 to 36 hours, middle 15.');
  await expect(rows).toHaveCount(2 + 7);
  await expect(rows.filter({ hasText: 'too little is told' })).toHaveCount(1);
  await estimate.getByText('How do we know?').click();
  await expect(estimate.locator('.used-figures tbody tr')).toHaveCount(9);
  await expect(estimate.locator('.works li').first()).toBeVisible();
  await expect(estimate.locator('.work-strip')).toContainText('Grinding: 8.3 hours');
});

test('a class: everyone’s number keyed in, its middle against its best guess', async ({
  watched: { page },
}) => {
  await open(page, YOUNGER);
  const estimate = page.locator('#estimate-2');
  await estimate.getByRole('button', { name: 'Say a number' }).click();
  await estimate.getByRole('button', { name: 'Class' }).click();
  for (const number of ['20', '30', '40', '100', '400']) {
    await estimate.locator('.mark-number').fill(number);
    await estimate.locator('.mark-number').press('Enter');
  }
  await expect(estimate.locator('.dot')).toHaveCount(5);
  await estimate.getByRole('button', { name: 'Take 400 away' }).click();
  await expect(estimate.locator('.dot')).toHaveCount(4);
  await readButton(estimate).click();
  await expect(estimate.locator('.class-lines')).toContainText(
    'the middle answer is 35 hours. That is the median.',
  );
  await expect(estimate.locator('.class-lines')).toContainText('47.5 hours. That is the mean.');
  await expect(estimate.locator('.class-lines')).toContainText('The best single guess is 20 hours.');
});

test('a class: hands up for comparisons, and for stretches of the line', async ({ watched: { page } }) => {
  await open(page, YOUNGER);
  const first = page.locator('#estimate-1');
  await first.getByRole('button', { name: 'Class' }).click();
  await first.locator('.hands-count').nth(0).fill('18');
  await first.locator('.hands-count').nth(1).fill('12');
  await readButton(first).click();
  await expect(first.locator('.record-line')).toContainText('of 30 hands');
  const second = page.locator('#estimate-2');
  await second.getByRole('button', { name: 'Say a number' }).click();
  await second.getByRole('button', { name: 'Class' }).click();
  await second.getByRole('button', { name: 'Hands up' }).click();
  await second.locator('.hands-count').nth(1).fill('3');
  await second.locator('.hands-count').nth(2).fill('20');
  await readButton(second).click();
  await expect(second.locator('.record-line')).toContainText('10 to 20 hours');
});

test('an answer is still there after a reload, and nothing of a person is stored', async ({
  watched: { page },
}) => {
  await open(page, YOUNGER);
  await page.locator('#estimate-1 .choice').nth(1).click();
  await readButton(page.locator('#estimate-1')).click();
  await page.reload();
  await ready(page);
  await expect(heading(page.locator('#estimate-1'))).toBeVisible();
  const stored = await page.evaluate(() => Object.keys(localStorage));
  expect(stored).toEqual(['pitlore/1/hours-in-an-axe/estimate-1']);
  await page.getByRole('button', { name: 'Start again' }).click();
  await page.getByRole('button', { name: 'Clear it' }).click();
  await expect(page.locator('#estimate-1 .choice[aria-pressed="true"]')).toHaveCount(0);
});

test('the levers answer within a frame on a slow device', async ({ watched: { page } }) => {
  await open(page, OLDER);
  const estimate = page.locator('#estimate-1');
  await estimate.locator('.mark-number').nth(0).fill('4');
  await estimate.locator('.mark-number').nth(0).press('Tab');
  await estimate.locator('.mark-number').nth(1).fill('40');
  await estimate.locator('.mark-number').nth(1).press('Tab');
  await readButton(estimate).click();
  const session = await page.context().newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: 4 });
  const presses: number[] = [];
  for (const name of [
    'Step on: Size',
    'Step back: Size',
    'Step on: Stone',
    'Step back: Stone',
    'Step on: Size',
  ]) {
    presses.push(
      await estimate.getByRole('button', { name }).evaluate(
        (button) =>
          new Promise<number>((resolve) => {
            const text = document.querySelector('#estimate-1 .levers-text');
            const before = text?.textContent;
            const start = performance.now();
            const watch = new MutationObserver(() => {
              if (text?.textContent !== before) resolve(performance.now() - start);
            });
            watch.observe(text ?? document.body, { characterData: true, childList: true, subtree: true });
            button.dispatchEvent(new MouseEvent('click', { bubbles: true }));
          }),
      ),
    );
  }
  const took = Math.min(...presses);
  console.log(`levers answered in ${took.toFixed(1)} ms at a quarter of the speed`);
  // A frame at 60 a second. The quickest of five presses: the machine may be busy with other things.
  expect(took).toBeLessThan(1000 / 60);
});

test('an estimate’s record has no accessibility finding, and its targets are large enough', async ({
  watched: { page },
}) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await open(page, OLDER);
  const estimate = page.locator('#estimate-1');
  await estimate.locator('.mark-number').nth(0).fill('4');
  await estimate.locator('.mark-number').nth(0).press('Tab');
  await estimate.locator('.mark-number').nth(1).fill('40');
  await estimate.locator('.mark-number').nth(1).press('Tab');
  await readButton(estimate).click();
  await estimate.getByText('How do we know?').click();
  const { default: AxeBuilder } = await import('@axe-core/playwright');
  const { violations } = await new AxeBuilder({ page }).analyze();
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html ?? ''}`)).toEqual([]);
  const small = await page.locator('main button, main summary, main input').evaluateAll((elements) =>
    elements
      .map((element) => ({ box: element.getBoundingClientRect(), html: element.outerHTML.slice(0, 90) }))
      .filter(({ box }) => box.width > 0 && (box.height < 43.5 || box.width < 43.5))
      .map(({ box, html }) => `${Math.round(box.width)}×${Math.round(box.height)} ${html}`),
  );
  expect(small).toEqual([]);
  const overflow = await page.evaluate(
    () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
  );
  expect(overflow).toBeLessThanOrEqual(0);
});
