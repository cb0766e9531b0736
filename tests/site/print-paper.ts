import { join } from 'node:path';
import { expect, type Page } from '@playwright/test';
import { footOf, pdfPages } from './pdf-text.ts';

/** What a paper prints as: its words, and what stands at the foot of its first sheet. */
export interface Printed {
  readonly words: string;
  readonly foot: string;
}

/** Presses a paper's button by key, sees that the browser was asked to print once, and prints what it would, as a PDF. */
export async function printPaper(page: Page, folder: string, path: string): Promise<Printed> {
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
