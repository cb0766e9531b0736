import { expect, type Locator } from '@playwright/test';
import type { PupilHands } from './pupil-hands.ts';

/** Answers in the way that is asked: the second comparison, a number, or a least and a most. */
export async function finishEstimate(estimate: Locator, { press, key }: PupilHands): Promise<object> {
  const choices = estimate.locator('button.choice');
  const numbers = estimate.locator('.mark-number');
  await expect(choices.or(numbers).first()).toBeVisible();
  if ((await choices.count()) > 0) {
    const choice = choices.nth(1);
    await press(choice);
    // As it is written: the style sheet shows it with a capital.
    return { choice: await choice.locator('.choice-name').textContent() };
  }
  const from = Number(await numbers.first().getAttribute('min'));
  const to = Number(await numbers.first().getAttribute('max'));
  if ((await numbers.count()) === 1) {
    await key(numbers, Math.round((from + to) / 2));
    // What is kept is what the field shows.
    return { number: Number(await numbers.inputValue()) };
  }
  await key(numbers.nth(0), Math.max(1, Math.ceil(from)));
  await key(numbers.nth(1), Math.round((from + to) / 2));
  return {
    interval: {
      lower: Number(await numbers.nth(0).inputValue()),
      upper: Number(await numbers.nth(1).inputValue()),
    },
  };
}
