import { execFileSync } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import ICAL from 'ical.js';
import type { Day } from '../../shared/day/index.ts';
import { dayCases } from '../bench/day-cases.ts';
import { squareDay } from '../shared/day/make-day.ts';
import { writeDay } from '../shared/day/write-day.ts';
import { expect, ready, SIZES, test } from './page-under-test.ts';

/** The page with one of its demo days open. */
async function openDemo(page: Page, title: string): Promise<void> {
  await page.goto('/day/');
  await ready(page);
  await page.getByRole('button', { name: title }).click();
  await expect(page.getByText('The file reads well.')).toBeVisible();
}

const MORNING = 'Begin from “A class morning at Wendle Marsh”';

/** Twelve stations, each a place of its own: too many ways to write down, so that the solver takes long over it. */
const longDay: Day = {
  ...squareDay(10, 12, 12),
  walkMinutes: Array.from({ length: 12 }, (_, from) =>
    Array.from({ length: 12 }, (__, to) => Math.min(Math.abs(from - to), 12 - Math.abs(from - to))),
  ),
  mayWalkLate: true,
};

async function openFile(page: Page, day: Day): Promise<void> {
  await page.goto('/day/');
  await ready(page);
  const buffer = Buffer.from(writeDay(day));
  await page
    .locator('input[type="file"]')
    .setInputFiles({ name: 'ours.yaml', mimeType: 'text/yaml', buffer });
  await expect(page.getByText('The file reads well.')).toBeVisible();
}

async function plan(page: Page): Promise<void> {
  await page.locator('[data-move="plan"]').click();
  await expect(page.locator('.day-grid').first()).toBeVisible({ timeout: 60_000 });
}

async function noFinding(page: Page): Promise<void> {
  const { violations } = await new AxeBuilder({ page }).analyze();
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html ?? ''}`)).toEqual([]);
}

const fileText = async (page: Page): Promise<string> => {
  await page.getByRole('button', { name: 'As a file' }).click();
  return page.getByLabel('The day file').inputValue();
};

test('a day is planned on the device, shown to be the best, and is still there after a reload', async ({
  watched: { page },
}) => {
  await openDemo(page, MORNING);
  await page.getByLabel('At most, seconds').fill('60');
  await page.getByLabel('At most, seconds').blur();
  await plan(page);
  await expect(page.locator('.day-worth')).toContainText('Shown to be the best');
  // Each group waits one of six slots and walks its shortest round of ten minutes: counted by hand.
  await expect(page.locator('.day-worth')).toContainText('100 min with nothing on');
  await expect(page.locator('.day-worth')).toContainText('50 min on foot, all groups');
  await expect(page.locator('.day-worth')).toContainText('By hand', { timeout: 30_000 });
  await page.reload();
  await ready(page);
  await expect(page.getByRole('heading', { name: 'A class morning at Wendle Marsh' })).toBeVisible();
  await expect(page.locator('.day-worth')).toContainText('Shown to be the best');
  for (const size of SIZES) {
    await page.setViewportSize({ width: size.width, height: size.height });
    const overflow = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    expect(overflow, size.name).toBeLessThanOrEqual(0);
    await noFinding(page);
  }
});

test('form and file are in step: a change in one is a change in the other, and comments stay', async ({
  watched: { page },
}) => {
  await openDemo(page, MORNING);
  await page.getByText('Groups 5').click();
  await page.locator('.day-entry summary', { hasText: 'Otter' }).click();
  const pupils = page.locator('.day-entry[open]').getByLabel('Pupils', { exact: true });
  await pupils.fill('7');
  await pupils.blur();
  const text = await fileText(page);
  expect(text).toContain('otter: { name: Otter, pupils: 7,');
  expect(text).toContain('# minutes on foot; other ways are put together from these');
  await page.getByLabel('The day file').fill(text.replace('name: Otter', 'name: Water otter'));
  await page.getByRole('button', { name: 'As a form' }).click();
  await page.getByText('Groups 5').click();
  await expect(page.locator('.day-entry summary', { hasText: 'Water otter' })).toBeVisible();
});

test('what is wrong is told as one writes, with a press that mends it', async ({ watched: { page } }) => {
  await openDemo(page, MORNING);
  const text = await fileText(page);
  await page.getByLabel('The day file').fill(text.replace('must-see: [pit,', 'must-see: [pits,'));
  await expect(page.getByText('1 thing to mend')).toBeVisible();
  await expect(page.locator('[data-move="plan"]')).toHaveAttribute('aria-disabled', 'true');
  await page.getByRole('button', { name: /line \d+, column \d+/ }).click();
  await expect(page.getByLabel('The day file')).toBeFocused();
  await noFinding(page);
  await page.getByRole('button', { name: 'Write “pit”' }).click();
  await expect(page.getByText('The file reads well.')).toBeVisible();
  expect(await page.getByLabel('The day file').inputValue()).toBe(text);
});

test('stopped early, the best so far is kept, and the page answers meanwhile', async ({
  watched: { page },
}) => {
  await openFile(page, longDay);
  await page.getByLabel('At most, seconds').fill('300');
  await page.getByLabel('At most, seconds').blur();
  await page.locator('[data-move="plan"]').click();
  await expect(page.locator('.day-work')).toContainText('Best so far', { timeout: 60_000 });
  // The page answers while the solver works.
  await page.getByRole('button', { name: 'As a file' }).click();
  await expect(page.getByLabel('The day file')).toBeVisible();
  await page.getByRole('button', { name: 'Stop and keep the best so far' }).click();
  await expect(page.locator('.day-worth')).toContainText('Stopped by you');
  await expect(page.locator('.day-grid tbody tr').first()).toBeVisible();
});

test('a day that cannot be says why; what is allowed goes to the file, and there is a plan', async ({
  watched: { page },
}) => {
  await openDemo(page, MORNING);
  const text = await fileText(page);
  await page
    .getByLabel('The day file')
    .fill(text.replace('ages: 7-8, arrives: "09:40"', 'ages: 7-8, arrives: "10:20"'));
  await expect(page.locator('[data-move="plan"]')).toHaveAttribute('aria-disabled', 'false');
  await page.waitForTimeout(400);
  await page.locator('[data-move="plan"]').click();
  await expect(page.getByText('There is no such day')).toBeVisible({ timeout: 60_000 });
  await expect(page.getByText('Heron has 5 things to do and is there for 4 slots.')).toBeVisible();
  await noFinding(page);
  await page.getByRole('button', { name: 'Allow this: Let Heron go without Pots' }).click();
  await expect(page.locator('.day-grid').first()).toBeVisible({ timeout: 60_000 });
  expect(await page.getByLabel('The day file').inputValue()).toContain('must-see: [');
  await expect(page.getByText('There is no such day')).toBeHidden();
});

test('a slot is fixed by hand by keyboard, and the rest is planned around it', async ({
  watched: { page },
}) => {
  await openDemo(page, MORNING);
  await plan(page);
  const cell = page.locator('.day-cell', { hasText: 'The pit' }).first();
  await cell.focus();
  await page.keyboard.press('Enter');
  await expect(page.locator('#day-pin-title')).toBeFocused();
  await page.keyboard.press('Tab');
  await page.keyboard.type('nothing');
  await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  await expect(page.locator('.day-fixed')).toHaveText('fixed', { timeout: 60_000 });
  await expect(page.locator('.day-worth')).toContainText('not as');
  await expect(page.locator('.day-cell', { hasText: 'fixed' })).toContainText('nothing on');
  expect(await fileText(page)).toContain('at: free');
});

test('wet weather closes stations, and each weather keeps a plan of its own', async ({
  watched: { page },
}) => {
  await openDemo(page, MORNING);
  await plan(page);
  await page.getByLabel(/Wet weather/).check();
  await expect(page.locator('.day-grid')).toHaveCount(0);
  await plan(page);
  await expect(page.locator('.day-worth')).toContainText('Closed in the rain: The pit.');
  await expect(page.locator('.day-grid').first()).not.toContainText('The pit');
  await page.getByLabel(/Wet weather/).uncheck();
  await expect(page.locator('.day-grid').first()).toContainText('The pit');
});

test('a late bus: what is to come is planned again, the file says when the group comes', async ({
  watched: { page },
}) => {
  await openDemo(page, MORNING);
  await plan(page);
  await page.getByText('On the day: plan again from now').click();
  await page.getByLabel('The next bell is at').selectOption('10:15');
  await page.getByLabel('Who comes late').selectOption('Heron');
  await page.getByLabel('and is there from').fill('10:15');
  await page.getByRole('button', { name: 'Plan again from that bell' }).click();
  await expect(page.locator('.day-grid').first().locator('tbody tr').first()).toContainText('not here', {
    timeout: 60_000,
  });
  expect(await fileText(page)).toContain('heron: { name: Heron, pupils: 6, ages: 7-8, arrives: "10:15"');
});

test('twelve groups at eight stations in eight slots: best, or within 5 % of it, in ten seconds', async ({
  watched: { page },
}) => {
  const day = dayCases[1]?.day;
  if (day === undefined) throw new Error('no case');
  await openFile(page, day);
  await plan(page);
  const says = await page.locator('.day-worth').innerText();
  const walked = Number(/(\d+) min on foot, all groups/.exec(says)?.[1]);
  const least = says.includes('Shown to be the best')
    ? walked
    : Number(/none under (\d+) min on foot/.exec(says)?.[1]);
  expect(walked).toBeLessThanOrEqual(least * 1.05);
});

test.describe('from the kept copy', () => {
  test.use({ serviceWorkers: 'allow' });
  test('with the network off: plan, sheets, and what is on now', async ({ watched: { page }, context }) => {
    await page.goto('/day/');
    await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
    await context.setOffline(true);
    await openDemo(page, MORNING);
    await plan(page);
    await page.getByRole('link', { name: 'What is on now' }).click();
    await ready(page);
    await page.getByLabel('See another time').fill('10:20');
    await expect(page.getByRole('status')).toHaveText('Now: 10:15 to 10:35');
    await expect(page.getByText('15 min left')).toBeVisible();
    await expect(page.getByText('Next: 10:40 to 11:00')).toBeVisible();
    // What is told to a screen reader is the bell, not the minutes.
    await page.getByLabel('See another time').fill('10:21');
    await expect(page.getByRole('status')).toHaveText('Now: 10:15 to 10:35');
    await expect(page.getByText('14 min left')).toBeVisible();
    await page.setViewportSize({ width: 390, height: 844 });
    await noFinding(page);
    await page.goto('/day/sheets/');
    await ready(page);
    await expect(page.locator('.day-card')).toHaveCount(5 + 5 + 6);
    await noFinding(page);
  });
});

test('the calendar is read by an outside reader', async ({ watched: { page } }) => {
  await openDemo(page, MORNING);
  await plan(page);
  const waiting = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save as a calendar file' }).click();
  const stream = await (await waiting).createReadStream();
  let text = '';
  for await (const chunk of stream) text += String(chunk);
  const events = new ICAL.Component(ICAL.parse(text)).getAllSubcomponents('vevent');
  // Five groups at five stations, and an adult at each of those 25.
  expect(events.length).toBe(50);
});

for (const format of ['A4', 'Letter'] as const) {
  test(`the sheets print on ${format}: the grid lies on its side, nothing is lost`, async ({
    watched: { page },
  }) => {
    await openDemo(page, MORNING);
    await plan(page);
    await page.goto('/day/sheets/');
    await ready(page);
    await expect(page.locator('.day-card').first()).toBeVisible();
    mkdirSync('test-results/papers', { recursive: true });
    const file = `test-results/papers/day-${format}.pdf`;
    writeFileSync(file, await page.pdf({ format, preferCSSPageSize: true, tagged: true }));
    const sizes = execFileSync('pdfinfo', ['-f', '1', '-l', '99', file], { encoding: 'utf8' });
    const [width, height] = (/Page +1 size: +([\d.]+) x ([\d.]+)/.exec(sizes) ?? []).slice(1).map(Number);
    expect(width).toBeGreaterThan(height ?? 0);
    const text = execFileSync('pdftotext', ['-layout', file, '-'], { encoding: 'utf8' });
    for (const name of [
      'Heron',
      'Otter',
      'Snipe',
      'Vole',
      'Eel',
      'Third helper',
      'finds trays',
      '60 printed sheets',
    ])
      expect(text).toContain(name);
    expect(text).not.toContain('Print these');
    expect(text).toContain('A class morning at Wendle Marsh');
  });
}

test('how long people wait: three helpers, and how many it takes', async ({ watched: { page } }) => {
  await page.goto('/day/drop-in/');
  await ready(page);
  // 20 parties an hour for 8 minutes at 3 places: 80 % wait, 19 minutes on average (worked out apart).
  await expect(page.getByRole('status')).toContainText('80 % of parties wait, over 15 minutes on average');
  await expect(page.getByRole('status')).toContainText('4 helpers keep the average wait to 5 min or less');
  await page.getByLabel('Helpers, one party each').fill('2');
  await expect(page.getByRole('status')).toContainText('the queue grows all day');
  await page.getByLabel('Parties an hour').fill('');
  await expect(page.getByText('Write a number from 0.1 to 1000.')).toBeVisible();
});
