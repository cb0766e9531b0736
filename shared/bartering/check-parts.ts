import { worldProblems } from '../words/en/world-problems.ts';
import { checkSize } from './check-size.ts';
import { checkTrader } from './check-trader.ts';
import { idleBecause } from './idle.ts';
import type { World } from './world.ts';
import { caution, error, type WorldFault } from './world-fault.ts';

function checkAim(world: World): WorldFault[] {
  const { aim, pupil, traders } = world;
  const ids = world.goods.map(({ id }) => id);
  if (!ids.includes(aim)) {
    return [error({ code: 'aim-unknown', path: ['aim'], ...worldProblems.aimUnknown(aim, ids) })];
  }
  if ((pupil.holds[aim] ?? 0) > 0) {
    return [error({ code: 'aim-held', path: ['you', 'holds', aim], ...worldProblems.aimHeld(aim) })];
  }
  if (!traders.some((trader) => (trader.holds[aim] ?? 0) > 0)) {
    return [error({ code: 'aim-unheld', path: ['aim'], ...worldProblems.aimUnheld(aim) })];
  }
  const worth = pupil.wants[aim]?.[0] ?? 0;
  const rivals = ids.filter((id) => id !== aim && (pupil.wants[id]?.[0] ?? 0) >= worth);
  if (rivals.length === 0) return [];
  const best = Math.max(...rivals.map((id) => pupil.wants[id]?.[0] ?? 0));
  const words = worldProblems.aimUnclear(aim, worth, rivals, best);
  return [error({ code: 'aim-unclear', path: ['you', 'wants'], ...words })];
}

/** What can be seen of a world without playing it: names, counts, wants that rise, an aim that is not one. */
export function checkParts(world: World): WorldFault[] {
  const faults = checkSize(world);
  for (const [list, code, key] of [
    [world.goods, 'good-repeated', 'goods'],
    [world.traders, 'trader-repeated', 'traders'],
  ] as const) {
    const ids = list.map(({ id }) => id);
    const twice = new Set(
      ids.filter((id, index) => ids.indexOf(id) !== index || (key === 'traders' && id === world.pupil.id)),
    );
    for (const id of twice) faults.push(error({ code, path: [key, id], ...worldProblems.nameRepeated(id) }));
  }
  for (const trader of [world.pupil, ...world.traders]) faults.push(...checkTrader(world, trader));
  faults.push(...checkAim(world));
  // A good goes unused by a slip elsewhere: that slip is told first.
  if (faults.length > 0) return faults;
  const everyone = [world.pupil, ...world.traders];
  for (const { id } of world.goods) {
    if (everyone.some((trader) => (trader.holds[id] ?? 0) > 0)) continue;
    faults.push(
      caution({ code: 'good-unused', path: ['goods', id], atKey: true, ...worldProblems.goodUnused(id) }),
    );
  }
  for (const trader of world.traders) {
    const because = idleBecause(world, trader);
    if (because === null) continue;
    const words = worldProblems.traderIdle(trader.name, because === 'wants-nothing-there');
    faults.push(caution({ code: 'trader-idle', path: ['traders', trader.id], atKey: true, ...words }));
  }
  return faults;
}
