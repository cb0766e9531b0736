import type { Gathering } from './gathering.ts';
import { replay } from './handover.ts';
import { inHand, isSpoiled, whenSettled, type Position } from './position.ts';
import { topTradingCycles } from './top-trading-cycles.ts';
import type { Handover, World } from './world.ts';
import { worthGained, worthLost } from './worth.ts';

/** One place in a ring: who takes what, and from whom. */
export interface RingSwap {
  readonly trader: string;
  readonly takes: string;
  readonly from: string;
  readonly gain: number;
}

/** The thing a trader would miss least, of those that may be swapped; -1 for none. */
function leastMissed(gathering: Gathering, position: Position, trader: number): number {
  let least = -1;
  for (let good = 0; good < gathering.goodCount; good += 1) {
    const isFree =
      inHand(gathering, position, trader, good) > 0 && whenSettled(gathering, position, trader, good) > 0;
    if (!isFree || gathering.onlyGiven[good] === true || isSpoiled(gathering, position, good)) continue;
    if (
      least < 0 ||
      worthLost(gathering, position, trader, [good]) < worthLost(gathering, position, trader, [least])
    )
      least = good;
  }
  return least;
}

/**
 * Rings that would help all in them at once after the handovers made: each gives the thing they would miss least.
 * By top trading cycles; ties go to whoever is met first. Doors are left out of account: a ring is a gathering of friends.
 */
export function unseenRings(world: World, made: readonly Handover[]): RingSwap[][] {
  const { gathering, positions } = replay(world, made);
  const position = positions.at(-1);
  if (position === undefined) return [];
  const ids = gathering.traders.map(({ id }) => id);
  const things = ids.map((_, trader) => leastMissed(gathering, position, trader));
  const gainOf = (trader: number, from: number): number => {
    const thing = things[from] ?? -1;
    const own = things[trader] ?? -1;
    if (thing < 0 || own < 0 || thing === own) return 0;
    return worthGained(gathering, position, trader, [thing]) - worthLost(gathering, position, trader, [own]);
  };
  const preferences = Object.fromEntries(
    ids.map((id, trader) => {
      const better = [...ids.keys()].filter((from) => gainOf(trader, from) > 0);
      return [
        id,
        [...better.sort((a, b) => gainOf(trader, b) - gainOf(trader, a)).map((from) => ids[from] ?? ''), id],
      ];
    }),
  );
  const { rounds, allocation } = topTradingCycles(preferences);
  const rings = rounds.flat().filter((ring) => ring.length > 1);
  return rings.map((ring) =>
    ring.map((id): RingSwap => {
      const from = allocation[id] ?? id;
      const source = ids.indexOf(from);
      return {
        trader: id,
        takes: gathering.goodIds[things[source] ?? -1] ?? '',
        from,
        gain: gainOf(ids.indexOf(id), source),
      };
    }),
  );
}
