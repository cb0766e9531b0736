import { distancesHome, explore } from './explore.ts';
import { nameStep, replay } from './handover.ts';
import { keyOf } from './position.ts';
import { chainHome } from './proof.ts';
import type { Handover, World } from './world.ts';

/** A chain with fewer handovers than the pupil's. */
export interface Shorter {
  readonly chain: readonly Handover[];
  /** How many of the pupil's own handovers it begins with. */
  readonly keeps: number;
}

/**
 * One shorter chain than the pupil's, keeping as much of the pupil's own as it can; null where there is none
 * (theirs was as short as can be, or the aim is out of reach). A pupil who never got there is shown the way from the
 * last place from which it could still be done.
 */
export function shorterChain(world: World, handovers: readonly Handover[]): Shorter | null {
  const { gathering, told, positions } = replay(world, handovers);
  const made = told.filter(({ refusal }) => refusal === null).map(({ handover }) => handover);
  const reach = explore(gathering);
  const distances = distancesHome(reach);
  const placeOf = new Map(reach.places.map((place, index) => [keyOf(place.position), index]));
  const indexes = positions.map((position) => placeOf.get(keyOf(position)) ?? -1);
  const firstHome = indexes.findIndex((index) => reach.places[index]?.isHome === true);
  const own = firstHome === -1 ? Infinity : made.length;
  for (let keeps = firstHome === -1 ? made.length : firstHome; keeps >= 0; keeps -= 1) {
    const index = indexes[keeps] ?? -1;
    const left = distances[index] ?? null;
    if (left === null || keeps + left >= own) continue;
    const rest = chainHome(reach, distances, index).map((step) => nameStep(gathering, step));
    return { chain: [...made.slice(0, keeps), ...rest], keeps };
  }
  return null;
}
