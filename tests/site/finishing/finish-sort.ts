import type { Locator } from '@playwright/test';
import { idsOf } from './ids-of.ts';
import type { PupilHands } from './pupil-hands.ts';

/** Lifts every find and lays it in a tray, tray after tray. */
export async function finishSort(sort: Locator, { press }: PupilHands): Promise<object> {
  const ground = sort.locator('.sort-ground');
  const placed: Record<string, string> = {};
  for (const [index, find] of (await idsOf(ground.locator('[data-find]'), 'data-find')).entries()) {
    await press(ground.locator(`[data-find="${find}"]`));
    const trays = await idsOf(sort.locator('.tray-place'), 'data-tray');
    const tray = trays[index % trays.length] ?? '';
    await press(sort.locator(`.tray-place[data-tray="${tray}"]`));
    placed[find] = tray;
  }
  return { placed };
}
