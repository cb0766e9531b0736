import { worldProblems } from '../words/en/world-problems.ts';
import type { World } from './world.ts';
import { error, type WorldFault } from './world-fault.ts';

/** What a search has room for; far more than anyone can play. */
const MOST_GOODS = 100;
const MOST_TRADERS = 30;
const MOST_BUNDLE = 3;

/** A world that no search has room for, or numbers that cannot be. */
export function checkSize(world: World): WorldFault[] {
  const faults: WorldFault[] = [];
  for (const [key, count, most] of [
    ['goods', world.goods.length, MOST_GOODS],
    ['traders', world.traders.length, MOST_TRADERS],
  ] as const) {
    if (count > most) {
      const words = worldProblems.tooManyOf(key, count, most);
      faults.push(error({ code: 'world-too-large', path: [key], ...words }));
    }
  }
  const { bundle } = world;
  if (!Number.isInteger(bundle) || bundle < 1 || bundle > MOST_BUNDLE) {
    const words = worldProblems.bundleUnfit(bundle, MOST_BUNDLE);
    faults.push(error({ code: 'count-unfit', path: ['bundle'], ...words }));
  }
  for (const { id, spoilsAfter } of world.goods) {
    if (spoilsAfter === null || (Number.isInteger(spoilsAfter) && spoilsAfter >= 1 && spoilsAfter <= 99))
      continue;
    const words = worldProblems.spoilsUnfit(spoilsAfter);
    faults.push(error({ code: 'count-unfit', path: ['goods', id, 'spoils-after'], ...words }));
  }
  return faults;
}
