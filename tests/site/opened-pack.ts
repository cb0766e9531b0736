import { pathToFileURL } from 'node:url';
import { expect, test as base, type Page } from '@playwright/test';

/**
 * Every test of a pack is without a network, on a device with touch and keys, and fails on any word on the console, any
 * request but the file itself, and any dialog.
 */
export const test = base.extend<{ opened: (file: string) => Promise<Page> }>({
  opened: async ({ browser }, use) => {
    const context = await browser.newContext({ offline: true, hasTouch: true });
    const said: string[] = [];
    const asked: string[] = [];
    await use(async (file) => {
      const page = await context.newPage();
      const url = pathToFileURL(file).href;
      page.on('console', (message) => said.push(message.text()));
      page.on('pageerror', (error) => said.push(String(error)));
      page.on('dialog', (dialog) => said.push(dialog.message()));
      page.on('request', (request) => {
        if (request.url().split('#')[0] !== url && !request.url().startsWith('data:'))
          asked.push(request.url());
      });
      await page.goto(url);
      return page;
    });
    await context.close();
    expect(said).toEqual([]);
    expect(asked).toEqual([]);
  },
});

export { expect };
