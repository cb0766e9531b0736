import type { Locator } from '@playwright/test';
import { idsOf } from './ids-of.ts';
import type { PupilHands } from './pupil-hands.ts';

/** Lays the cards on the line as they were dealt, then moves the last but one step earlier. */
export async function finishOrder(order: Locator, { press }: PupilHands): Promise<object> {
  const laid = [...(await idsOf(order.locator('.step-cards [data-card]'), 'data-card'))];
  for (const card of laid) {
    await press(order.locator(`.step-cards [data-card="${card}"]`));
    await press(order.locator('.line-card[data-state="empty"]').first());
  }
  const last = laid.pop() ?? '';
  await press(order.locator(`[data-by="-1"][data-of="${last}"]`));
  laid.splice(-1, 0, last);
  return { laid };
}
