import { expect, type Locator, type Page } from '@playwright/test';
import { finishClass, finishGathering } from './finish-barter.ts';
import { finishChance, finishPlaces } from './finish-compare.ts';
import { finishEstimate } from './finish-estimate.ts';
import { finishHandle } from './finish-handle.ts';
import { finishOrder } from './finish-order.ts';
import { finishSort } from './finish-sort.ts';
import { finishTalk } from './finish-talk.ts';
import { keyboardHands, touchHands, type PupilHands } from './pupil-hands.ts';

/** What was done with an activity, in the words of a play; a comparison chosen is told by its label. */
export interface Done {
  readonly activity: string;
  readonly [key: string]: unknown;
}

interface Way {
  /** What the screen is known by; the first that is there counts. */
  readonly within: string;
  readonly finish: (screen: Locator, hands: PupilHands) => Promise<object>;
  readonly isScored: boolean;
}

const WAYS: readonly Way[] = [
  { within: '.compare:has(.pairs-choice)', finish: finishChance, isScored: true },
  { within: '.compare', finish: finishPlaces, isScored: true },
  { within: '.sort', finish: finishSort, isScored: true },
  { within: '.order', finish: finishOrder, isScored: true },
  { within: '.estimate', finish: finishEstimate, isScored: true },
  { within: '.barter:has(.class-deal)', finish: finishClass, isScored: true },
  { within: '.barter', finish: finishGathering, isScored: true },
  { within: '.handle', finish: finishHandle, isScored: false },
  { within: '.talk', finish: finishTalk, isScored: false },
];

/** Goes through one activity of a pack or a page as a pupil does, and reads its record card. */
export async function finishActivity(activity: Locator, hands: PupilHands): Promise<Done> {
  const id = (await activity.getAttribute('id')) ?? '';
  for (const { within, finish, isScored } of WAYS) {
    const screen = activity.locator(within);
    if ((await screen.count()) === 0) continue;
    const play = await finish(screen, hands);
    // What the screen was known by may be gone once its record is read.
    await hands.press(activity.locator('[data-move="read"]'));
    const record = activity.locator('[data-record]');
    await expect(record, id).toBeVisible();
    // A board reads it out, and the next Tab goes on from there.
    await expect(record, id).toBeFocused();
    if (!isScored) await expect(activity).toContainText(/there is no score/i);
    return { activity: id, ...play };
  }
  throw new Error(`${id}: no pupil knows this screen`);
}

/** Finishes every activity of a page, by keyboard and by touch in turn. */
export async function finishAll(page: Page, first: PupilHands['way']): Promise<readonly Done[]> {
  const hands = [keyboardHands(page), touchHands(page)];
  if (first === 'touch') hands.reverse();
  const done: Done[] = [];
  for (const [index, activity] of (await page.locator('section.activity').all()).entries()) {
    const [one, other] = hands;
    const own = index % 2 === 0 ? one : other;
    if (own !== undefined) done.push(await finishActivity(activity, own));
  }
  return done;
}
