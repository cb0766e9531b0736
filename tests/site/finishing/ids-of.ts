import { expect, type Locator } from '@playwright/test';

/** What an attribute says on each of several things, in the order of the page; there must be one at least. */
export async function idsOf(things: Locator, attribute: string): Promise<readonly string[]> {
  await expect(things.first()).toBeAttached();
  return things.evaluateAll(
    (elements, name) => elements.map((element) => element.getAttribute(name) ?? ''),
    attribute,
  );
}
