import { test as base, expect, type Page } from '@playwright/test';

/** Errors a page may not have: anything on its console, any request that leaves the site. */
export interface Watched {
  readonly page: Page;
  readonly strangers: readonly string[];
}

/** Every browser test fails on a console error, a page error, or a request to another host. */
export const test = base.extend<{ watched: Watched }>({
  watched: async ({ page, baseURL }, use) => {
    const errors: string[] = [];
    const strangers: string[] = [];
    page.on('console', (message) => {
      if (message.type() === 'error') errors.push(message.text());
    });
    page.on('pageerror', (error) => errors.push(String(error)));
    page.on('request', (request) => {
      const url = request.url();
      if (!url.startsWith(baseURL ?? '') && !url.startsWith('data:') && !url.startsWith('blob:'))
        strangers.push(url);
    });
    await use({ page, strangers });
    expect(errors).toEqual([]);
    expect(strangers).toEqual([]);
  },
});

export { expect };

/** Waits until every island of the page answers: a press before that is lost. */
export async function ready(page: Page): Promise<void> {
  await page.waitForFunction(() => document.querySelector('astro-island[ssr]') === null);
}

/** The widths the product is looked at: a phone, a tablet, a board. */
export const SIZES = [
  { name: 'phone', width: 390, height: 844 },
  { name: 'tablet', width: 820, height: 1180 },
  { name: 'board', width: 1920, height: 1080 },
] as const;
