import { expect, type Locator } from '@playwright/test';
import { idsOf } from './ids-of.ts';
import type { PupilHands } from './pupil-hands.ts';

/** Takes each piece, meets it with every sense that is asked for, and asks about the last. */
export async function finishHandle(handle: Locator, { press }: PupilHands): Promise<object> {
  const met: Record<string, readonly string[]> = {};
  const pieces = await idsOf(handle.locator('.handle-place'), 'data-piece');
  for (const piece of pieces) {
    await press(handle.locator(`.handle-place[data-piece="${piece}"]`));
    await expect(handle.locator(`.handle-place[data-piece="${piece}"]`)).toHaveAttribute(
      'aria-pressed',
      'true',
    );
    const senses = await idsOf(handle.locator('[data-sense]'), 'data-sense');
    for (const sense of senses) {
      await press(handle.locator(`[data-sense="${sense}"]`));
      await expect(handle.locator(`[data-sense="${sense}"]`)).toHaveAttribute('aria-pressed', 'true');
    }
    met[piece] = senses;
  }
  const asked = pieces.at(-1) ?? '';
  await press(handle.locator(`[data-choice="${asked}"]`));
  return { met, asks: { [asked]: 1 } };
}
