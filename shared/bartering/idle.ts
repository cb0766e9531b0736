import type { Trader, World } from './world.ts';

/** What keeps a trader out of every swap: nothing the pupil wants of them, or nothing there that they want; null for nothing. */
export function idleBecause(
  world: World,
  trader: Trader,
): 'holds-nothing-wanted' | 'wants-nothing-there' | null {
  const isWantedBy = (taker: Trader, holder: Trader): boolean =>
    Object.entries(holder.holds).some(([good, count]) => count > 0 && (taker.wants[good]?.[0] ?? 0) > 0);
  if (!isWantedBy(world.pupil, trader)) return 'holds-nothing-wanted';
  const others = [world.pupil, ...world.traders].filter((other) => other !== trader);
  return others.some((other) => isWantedBy(trader, other)) ? null : 'wants-nothing-there';
}
