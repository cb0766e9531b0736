import { expect, type Locator, type Page } from '@playwright/test';

/** How a pupil presses and keys in: by the keyboard alone, or by touch alone. */
export interface PupilHands {
  readonly way: 'keyboard' | 'touch';
  readonly page: Page;
  readonly press: (target: Locator) => Promise<void>;
  /** Keys a number into a field. */
  readonly key: (field: Locator, number: number) => Promise<void>;
}

/** More stops than any page has between two presses. */
const MOST_TABS = 300;

/** Waits until what a press draws is drawn and has the focus, and a frame more. */
const settled = (page: Page): Promise<void> =>
  page.evaluate(
    () =>
      new Promise<void>((resolve) => {
        setTimeout(() => requestAnimationFrame(() => resolve()));
      }),
  );

/** Which key leads on to an element, and how often it should be pressed; null where it has the focus. */
const wayTo = (target: Locator): Promise<{ readonly key: string; readonly times: number } | null> =>
  target.evaluate((element) => {
    const at = document.activeElement ?? document.body;
    if (at === element) return null;
    const stops = [
      ...document.querySelectorAll(
        'a[href], button, input, select, textarea, summary, [tabindex]:not([tabindex="-1"])',
      ),
    ].filter((stop) => stop.checkVisibility({ visibilityProperty: true }) && !stop.matches(':disabled'));
    const follows = (one: Node, other: Node): boolean =>
      (one.compareDocumentPosition(other) & Node.DOCUMENT_POSITION_FOLLOWING) !== 0;
    const isBehind = at !== document.body && follows(element, at);
    const between = stops.filter((stop) =>
      isBehind ? follows(element, stop) && follows(stop, at) : follows(at, stop) && follows(stop, element),
    );
    return { key: isBehind ? 'Shift+Tab' : 'Tab', times: between.length + 1 };
  });

/** Tab after Tab, forwards or back, until the target has the focus: a thing no Tab comes to is not reached. */
async function tabTo(page: Page, target: Locator): Promise<void> {
  await expect(target).toBeVisible();
  await expect(target).toBeEnabled();
  await settled(page);
  for (let pressed = 0; pressed < MOST_TABS;) {
    const way = await wayTo(target);
    if (way === null) return;
    for (let times = 0; times < way.times; times += 1) await page.keyboard.press(way.key);
    pressed += way.times;
  }
  throw new Error(`not reached by Tab: ${String(target)}`);
}

/** Hands on a keyboard: Tab, then Enter and the space bar by turns. */
export function keyboardHands(page: Page): PupilHands {
  let presses = 0;
  return {
    way: 'keyboard',
    page,
    press: async (target) => {
      await tabTo(page, target);
      presses += 1;
      await page.keyboard.press(presses % 2 === 0 ? ' ' : 'Enter');
    },
    key: async (field, number) => {
      await tabTo(page, field);
      await page.keyboard.press('ControlOrMeta+A');
      await page.keyboard.type(String(number));
      await page.keyboard.press('Tab');
    },
  };
}

/** A finger; numbers are keyed in on what the device shows for it. */
export function touchHands(page: Page): PupilHands {
  return {
    way: 'touch',
    page,
    press: (target) => target.tap(),
    key: async (field, number) => {
      await field.tap();
      await field.fill(String(number));
      await field.blur();
    },
  };
}
