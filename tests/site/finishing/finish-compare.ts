import { expect, type Locator } from '@playwright/test';
import { idsOf } from './ids-of.ts';
import type { PupilHands } from './pupil-hands.ts';

/** Says of each kind where it lies, place after place. */
export async function finishPlaces(compare: Locator, { press }: PupilHands): Promise<object> {
  const places: Record<string, Record<string, number>> = {};
  for (const [index, kind] of (await idsOf(compare.locator('[data-question]'), 'data-question')).entries()) {
    await press(compare.locator(`[data-question="${kind}"]`));
    const offered = await idsOf(compare.locator('[data-place]'), 'data-place');
    const place = offered[index % offered.length] ?? '';
    await press(compare.locator(`[data-place="${place}"]`));
    places[kind] = { [place]: 1 };
  }
  return { places };
}

const JUDGEMENTS = ['chance-could', 'chance-hardly'] as const;
/** How alike, in so many steps from not at all to the same. */
const STEPS = 4;

/** Says of each pair how alike it is and whether chance could do it, shuffles, and says it again. */
export async function finishChance(compare: Locator, { press }: PupilHands): Promise<object> {
  const pairs = compare.locator('.pairs-choice button');
  const count = await pairs.count();
  const likeness: Record<string, number> = {};
  const before: Record<string, Record<string, number>> = {};
  const after: Record<string, Record<string, number>> = {};
  for (let index = 0; index < count; index += 1) {
    await press(pairs.nth(index));
    const pair = (await compare.locator('[data-pair]').getAttribute('data-pair')) ?? '';
    const answer = (asks: string, place: number): Promise<void> =>
      press(compare.locator(`[data-asks="${asks}-${pair}"] button`).nth(place));
    await answer('alike', index % (STEPS + 1));
    await answer('before', index % 2);
    await press(compare.locator('[data-move="shuffle"]'));
    // The pile grows frame by frame; a busy machine has few frames.
    await expect(compare.locator(`[data-asks="after-${pair}"]`)).toBeVisible({ timeout: 30_000 });
    await answer('after', (index + 1) % 2);
    likeness[pair] = (index % (STEPS + 1)) / STEPS;
    before[pair] = { [JUDGEMENTS[index % 2] ?? '']: 1 };
    after[pair] = { [JUDGEMENTS[(index + 1) % 2] ?? '']: 1 };
  }
  return { likeness, before, after };
}
