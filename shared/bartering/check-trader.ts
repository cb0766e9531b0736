import { worldProblems } from '../words/en/world-problems.ts';
import type { Trader, World } from './world.ts';
import { error, placeOfTrader, type WorldFault } from './world-fault.ts';

/** What is wrong with one trader's own lines, the pupil's among them. */
export function checkTrader(world: World, trader: Trader): WorldFault[] {
  const faults: WorldFault[] = [];
  const place = placeOfTrader(world.pupil.id, trader.id);
  const known = new Map(world.goods.map((good) => [good.id, good]));
  for (const key of ['holds', 'wants'] as const) {
    for (const good of Object.keys(trader[key])) {
      if (known.has(good)) continue;
      const words = worldProblems.goodUnknown(good, [...known.keys()]);
      faults.push(error({ code: 'good-unknown', path: [...place, key, good], atKey: true, ...words }));
    }
  }
  for (const good of trader.forSwapping) {
    if ((trader.wants[good]?.[0] ?? 0) > 0) continue;
    const words = worldProblems.onwardUnwanted(good, known.has(good));
    faults.push(error({ code: 'good-unknown', path: [...place, 'for-swapping'], ...words }));
  }
  for (const [good, count] of Object.entries(trader.holds)) {
    if (Number.isInteger(count) && count >= 0 && count <= 99) continue;
    const words = worldProblems.countUnfit(count);
    faults.push(error({ code: 'count-unfit', path: [...place, 'holds', good], ...words }));
  }
  for (const [good, worths] of Object.entries(trader.wants)) {
    const path = [...place, 'wants', good];
    const odd = worths.find((worth) => !Number.isInteger(worth) || worth < 0 || worth > 999);
    if (odd !== undefined) {
      faults.push(error({ code: 'count-unfit', path, ...worldProblems.worthUnfit(odd) }));
    }
    const at = worths.findIndex((worth, index) => worth > (worths[index - 1] ?? Infinity));
    if (at < 0) continue;
    const words = worldProblems.wantsRise(worths[at - 1] ?? 0, worths[at] ?? 0, at + 1);
    faults.push(error({ code: 'wants-rise', path, ...words }));
  }
  return [...faults, ...checkReturns(world, trader)];
}

function checkReturns(world: World, trader: Trader): WorldFault[] {
  const place = placeOfTrader(world.pupil.id, trader.id);
  const { returns } = trader;
  if (returns === null) {
    if (trader.door === 'open') return [];
    const words = worldProblems.doorNeverOpens(trader.name);
    return [error({ code: 'door-never-opens', path: [...place, 'door'], ...words })];
  }
  const path = [...place, 'returns'];
  const good = world.goods.find(({ id }) => id === returns);
  if ((trader.holds[returns] ?? 0) === 0) {
    const words = worldProblems.returnUnheld(trader.name, returns, Object.keys(trader.holds));
    return [error({ code: 'return-unheld', path, ...words })];
  }
  if (good === undefined || good.spoilsAfter === null) return [];
  return [error({ code: 'return-spoils', path, ...worldProblems.returnSpoils(returns) })];
}
