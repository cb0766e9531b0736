import { AxeBuilder } from '@axe-core/playwright';
import { expect, ready, SIZES, test } from './page-under-test.ts';

const PLACES = '/lessons/two-pits/';
const CHANCE = '/lessons/same-list/';

/** Where the invented record has them. */
const LYING = [
  { kind: 'pig-jaw', place: 'both' },
  { kind: 'bone-pin', place: 'both' },
  { kind: 'grooved-ware-sherd', place: 'both' },
  { kind: 'hazelnut-shells', place: 'both' },
  { kind: 'chalk-disc', place: 'only-first' },
  { kind: 'polishing-stone-fragment', place: 'only-first' },
  { kind: 'cattle-bone', place: 'only-second' },
  { kind: 'quern-fragment', place: 'only-second' },
] as const;

const PAIRS = 6;

for (const size of SIZES) {
  test.describe(`at ${size.name} size`, () => {
    test.use({ viewport: { width: size.width, height: size.height } });

    test('places are finished by keyboard alone', async ({ watched: { page } }) => {
      await page.goto(PLACES);
      await ready(page);
      await page.locator('[data-question]').first().focus();
      for (let placed = 0; placed < LYING.length; placed += 1) {
        await page.keyboard.press(placed % 2 === 0 ? 'Enter' : ' ');
        await expect(page.locator('[data-place]').first()).toBeFocused();
        await page.keyboard.press('Enter');
        await expect(page.getByRole('status').first()).toContainText(': in both pits.');
        await expect(page.locator(':focus')).not.toHaveAttribute('data-place', /./);
      }
      await expect(page.locator('[data-move="read"]')).toBeFocused();
      await page.keyboard.press('Enter');
      await expect(page.getByRole('heading', { name: 'Record card' })).toBeFocused();
      await expect(page.locator('.record-line')).toContainText('4 of 8');
    });

    test('chance is finished by keyboard alone', async ({ watched: { page } }) => {
      await page.goto(CHANCE);
      await ready(page);
      for (let pair = 0; pair < PAIRS; pair += 1) {
        await page
          .locator('[data-asks^="alike"] button')
          .nth(pair % 5)
          .focus();
        await page.keyboard.press('Enter');
        await page.locator('[data-asks^="before"] button').first().focus();
        await page.keyboard.press(' ');
        await page.locator('[data-move="shuffle"]').focus();
        await page.keyboard.press('Enter');
        await expect(page.locator('[data-asks^="after"] button').first()).toBeFocused();
        await expect(page.locator('.pile-dot').first()).toBeAttached();
        await page.keyboard.press('Enter');
        if (pair === PAIRS - 1) break;
        await page.locator('[data-move="next"]').focus();
        await page.keyboard.press('Enter');
        await expect(page.locator('[data-pair]')).toBeFocused();
      }
      await page.locator('[data-move="read"]').focus();
      await page.keyboard.press('Enter');
      await expect(page.getByRole('heading', { name: 'Record card' })).toBeFocused();
      await expect(page.locator('.record tbody tr')).toHaveCount(PAIRS);
      await expect(page.locator('.record-line')).toContainText('you judged 4 of 6');
    });
  });

  test.describe(`by touch at ${size.name} size`, () => {
    test.use({ viewport: { width: size.width, height: size.height }, hasTouch: true });

    test('places are finished by touch alone', async ({ watched: { page } }) => {
      await page.goto(PLACES);
      await ready(page);
      for (const { kind, place } of LYING) {
        await page.locator(`[data-question="${kind}"]`).tap();
        await page.locator(`[data-place="${place}"]`).tap();
      }
      await page.locator('[data-move="read"]').tap();
      await expect(page.locator('.record-line')).toContainText('8 of 8');
      await expect(page.locator('.mark[data-mark="other"]')).toHaveCount(0);
      await expect(page.getByText('Reasons to doubt it')).toBeVisible();
    });

    test('chance is finished by touch alone', async ({ watched: { page } }) => {
      await page.goto(CHANCE);
      await ready(page);
      for (let pair = 0; pair < PAIRS; pair += 1) {
        await page.locator('.pairs-choice button').nth(pair).tap();
        await page.locator('[data-asks^="alike"] button').nth(2).tap();
        await page.locator('[data-asks^="before"] button').nth(1).tap();
        await page.locator('[data-move="shuffle"]').tap();
        await page.locator('[data-asks^="after"] button').nth(1).tap();
      }
      await page.locator('[data-move="read"]').tap();
      await expect(page.locator('.record-line')).toContainText('you judged 2 of 6');
      await page.locator('.site-list summary').tap();
      await expect(page.locator('.site-list')).toContainText('Pits 3, 5, 8 share most uncommon kinds');
    });
  });
}

for (const path of [PLACES, CHANCE]) {
  test(`${path} is readable by all while at work and with its record card`, async ({ watched: { page } }) => {
    const faults = async () => (await new AxeBuilder({ page }).analyze()).violations.map(({ id }) => id);
    await page.goto(path);
    await ready(page);
    if (path === PLACES) {
      await page.locator('[data-question]').first().click();
      expect(await faults()).toEqual([]);
      await page.locator('[data-place]').first().click();
      for (let left = LYING.length - 1; left > 0; left -= 1) {
        await page.locator('[data-question]').first().click();
        await page.locator('[data-place]').first().click();
      }
    } else {
      for (let pair = 0; pair < PAIRS; pair += 1) {
        await page.locator('.pairs-choice button').nth(pair).click();
        await page.locator('[data-asks^="alike"] button').nth(1).click();
        await page.locator('[data-asks^="before"] button').nth(1).click();
        await page.locator('[data-move="shuffle"]').click();
        await page.locator('[data-asks^="after"] button').nth(0).click();
      }
      expect(await faults()).toEqual([]);
    }
    await page.locator('[data-move="read"]').click();
    for (const summary of await page.locator('.record-card summary').all()) await summary.click();
    expect(await faults()).toEqual([]);
  });
}

test('a place is still there after a reload; Escape and Step back undo', async ({ watched: { page } }) => {
  await page.goto(PLACES);
  await ready(page);
  const jaw = page.locator('[data-question="pig-jaw"]');
  await jaw.click();
  await page.keyboard.press('Escape');
  await expect(jaw).toHaveAttribute('aria-pressed', 'false');
  await jaw.click();
  await page.locator('[data-place="both"]').click();
  await page.reload();
  await ready(page);
  await expect(jaw).toHaveCount(0);
  await page.locator('[data-question="chalk-disc"]').click();
  await page.locator('[data-place="both"]').click();
  await page.getByRole('button', { name: 'Step back' }).click();
  await expect(page.locator('[data-question="chalk-disc"]')).toHaveCount(1);
});

test('nobody may shuffle before they have said', async ({ watched: { page } }) => {
  await page.goto(CHANCE);
  await ready(page);
  await page.locator('[data-move="shuffle"]').click({ force: true });
  await expect(page.getByRole('status').first()).toContainText('Say both first');
  await expect(page.locator('.pile')).toHaveCount(0);
});

test('hands up: counts are keyed in for each place, and the record counts what most said', async ({
  watched: { page },
}) => {
  await page.goto(PLACES);
  await ready(page);
  await page.getByRole('button', { name: 'Hands up' }).click();
  for (const { kind } of LYING) {
    await page.locator(`[data-question="${kind}"]`).click();
    await page.locator('.hands-count').nth(0).fill('18');
    await page.locator('.hands-count').nth(1).fill('9');
  }
  await page.locator('[data-move="read"]').click();
  await expect(page.locator('.record-line')).toContainText('4 of 8');
});

test('on paper: what the pits hold, boxes to tick, the record with its doubts', async ({
  watched: { page },
}) => {
  await page.goto(`${PLACES}pupil-sheet/`);
  await expect(page.locator('.compare-ticks tbody tr')).toHaveCount(LYING.length);
  await page.goto(`${CHANCE}pupil-sheet/`);
  await expect(page.locator('.compare-ticks tbody tr')).toHaveCount(PAIRS);
  await page.goto(`${CHANCE}answers/`);
  await expect(page.locator('.answers tbody tr')).toHaveCount(PAIRS);
  await expect(page.getByText('It does not mean somebody meant it')).toBeVisible();
  await expect(page.locator('.seriation')).toBeVisible();
});
