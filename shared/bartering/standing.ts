import { replay } from './handover.ts';
import { holdingOf, isHome, isSpoiled, owedBy, startOf } from './position.ts';
import type { Handover, Holding, World } from './world.ts';

/** How things stand after some handovers, by id. */
export interface Standing {
  /** What each has in hand, the pupil among them. */
  readonly hands: Readonly<Record<string, Holding>>;
  /** The good each trader owes the pupil; those who owe nothing are left out. */
  readonly owed: Readonly<Record<string, string>>;
  /** Goods that have spoiled. */
  readonly spoiled: readonly string[];
  /** The pupil has the aim in hand. */
  readonly isHome: boolean;
}

/** How things stand after the handovers made so far. @example standing(world, []).hands['you'] // { hide: 1 } */
export function standing(world: World, made: readonly Handover[]): Standing {
  const { gathering, positions } = replay(world, made);
  const position = positions.at(-1) ?? startOf(gathering);
  const ids = gathering.traders.map(({ id }) => id);
  const owed = ids.flatMap((id, trader) => {
    const good = trader === 0 ? -1 : owedBy(gathering, position, trader);
    return good < 0 ? [] : [[id, gathering.goodIds[good] ?? ''] as const];
  });
  return {
    hands: Object.fromEntries(ids.map((id, trader) => [id, holdingOf(gathering, position, trader)])),
    owed: Object.fromEntries(owed),
    spoiled: gathering.goodIds.filter((_, good) => isSpoiled(gathering, position, good)),
    isHome: isHome(gathering, position),
  };
}
