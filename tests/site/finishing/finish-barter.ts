import { expect, type Locator } from '@playwright/test';
import type { PupilHands } from './pupil-hands.ts';
import { chainHome, seeGathering, swapsLiked, type Step } from './seen-gathering.ts';

const thing = (barter: Locator, side: 0 | 1, good: string): Locator =>
  barter.locator('.offer-side').nth(side).locator(`[data-good="${good}"]`).first();

/** Goes to somebody, offers one thing for another, or for nothing, and says whether it passed. */
async function offer(
  barter: Locator,
  { press }: PupilHands,
  { with: trader, give, take }: Omit<Step, 'take'> & { readonly take: string | null },
): Promise<boolean> {
  const before = await barter.locator('.chain li').count();
  await press(barter.locator(`[data-trader="${trader}"]`));
  await press(thing(barter, 0, give));
  if (take !== null) await press(thing(barter, 1, take));
  await press(barter.locator('[data-move="offer"]'));
  const passed = barter.locator('.chain li').nth(before);
  await expect(passed.or(barter.locator('.offer-answer')).first()).toBeAttached();
  return (await passed.count()) > 0;
}

const asSwap = ({ with: trader, give, take }: Step): object => ({
  with: trader,
  give: [give],
  take: [take],
});

/**
 * Asks everyone what they would like, thinks, and swaps until one holds what one came for. Where gifts open doors, or two
 * things go against one and no chain of single things leads home, one gift or swap that passes is enough.
 */
export async function finishGathering(barter: Locator, hands: PupilHands): Promise<object> {
  const asks = barter.locator('[data-ask]');
  while ((await asks.count()) > 0) {
    const left = await asks.count();
    await hands.press(asks.first());
    await expect(asks).toHaveCount(left - 1);
  }
  const seen = await seeGathering(barter);
  const hasGifts = (await barter.getByText('Takes a gift').count()) > 0;
  const chain = hasGifts ? null : chainHome(seen);
  if (chain !== null) {
    for (const step of chain) expect(await offer(barter, hands, step), JSON.stringify(step)).toBe(true);
    await expect(barter.locator('[data-move="read"]')).toHaveAttribute('data-weight', 'main');
    return { swaps: chain.map(asSwap) };
  }
  const [gift = ''] = seen.holds;
  if (hasGifts)
    for (const { id } of seen.traders) {
      if (await offer(barter, hands, { with: id, give: gift, take: null }))
        return { swaps: [{ with: id, give: [gift], take: [] }] };
      await hands.press(barter.getByRole('button', { name: /^Leave / }));
    }
  for (const step of swapsLiked(seen)) {
    if (await offer(barter, hands, step)) return { swaps: [asSwap(step)] };
    await hands.press(barter.getByRole('button', { name: /^Leave / }));
  }
  throw new Error('nobody takes a gift or a swap');
}

/** Keys in what each of a class gained: all nothing but two, who gained one. */
export async function finishClass(barter: Locator, { key }: PupilHands): Promise<object> {
  const pupils = Number(await barter.locator('.class-deal .hands-count').inputValue());
  const gains = barter.locator('.class-hands .hands-count');
  await key(gains.nth(0), pupils - 2);
  await key(gains.nth(1), 2);
  return { pupils, gains: { 0: pupils - 2, 1: 2 } };
}
