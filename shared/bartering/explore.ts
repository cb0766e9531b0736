import type { Gathering } from './gathering.ts';
import { legalSteps } from './legal.ts';
import { after, isHome, keyOf, startOf, type Position, type Step } from './position.ts';

/** One way on from a position. */
export interface Way {
  readonly step: Step;
  /** The place, among the places reached, that it leads to. */
  readonly to: number;
}

/** A position that can be reached, with the fewest handovers and in how many ways by so few. */
export interface Place {
  readonly position: Position;
  readonly depth: number;
  readonly shortestWays: number;
  readonly isHome: boolean;
  /** Empty at the aim: there the gathering is over. */
  readonly ways: readonly Way[];
}

/** All that can be reached, breadth first; the start is the first. */
export interface Reach {
  readonly gathering: Gathering;
  readonly places: readonly Place[];
  /** False when there was more than the limit; then the last places have no ways yet. */
  readonly isComplete: boolean;
  /** So many of the places, from the first, have all their ways. */
  readonly looked: number;
  /** Every place with this many handovers or fewer is among the places, with all the shortest ways to it. */
  readonly surelyTo: number;
}

/** More positions than this are not looked at once par is sure: about a tenth of a second. */
export const MOST_PLACES = 2_000;
/** So many times more are looked at for par alone. */
const FURTHER = 8;

/**
 * Everything that can come of a gathering, breadth first.
 *
 * It always ends: each swap and gift leaves two people better off and nobody worse, a return settles a debt for good,
 * and spoiling only runs one way, so no position comes back.
 */
export function explore(gathering: Gathering, mostPlaces: number = MOST_PLACES): Reach {
  const start = startOf(gathering);
  interface Draft {
    position: Position;
    depth: number;
    shortestWays: number;
    isHome: boolean;
    ways: Way[];
  }
  const places: Draft[] = [
    { position: start, depth: 0, shortestWays: 1, isHome: isHome(gathering, start), ways: [] },
  ];
  const placeOf = new Map([[keyOf(start), 0]]);
  let isComplete = true;
  let looked = 0;
  let nearestHome = places[0]?.isHome === true ? 0 : Infinity;
  for (; looked < places.length; looked += 1) {
    const place = places[looked];
    if (place === undefined || place.isHome) continue;
    if (places.length > mostPlaces && (nearestHome <= place.depth || places.length > FURTHER * mostPlaces)) {
      isComplete = false;
      break;
    }
    for (const step of legalSteps(gathering, place.position)) {
      const position = after(gathering, place.position, step);
      const key = keyOf(position);
      let to = placeOf.get(key);
      if (to === undefined) {
        to = places.length;
        placeOf.set(key, to);
        const home = isHome(gathering, position);
        if (home) nearestHome = Math.min(nearestHome, place.depth + 1);
        places.push({ position, depth: place.depth + 1, shortestWays: 0, isHome: home, ways: [] });
      }
      const next = places[to];
      if (next !== undefined && next.depth === place.depth + 1) next.shortestWays += place.shortestWays;
      place.ways.push({ step, to });
    }
  }
  const surelyTo = isComplete ? Infinity : (places[looked]?.depth ?? 0);
  return { gathering, places, isComplete, looked, surelyTo };
}

/** For each place, the fewest handovers from there to the aim; null where none leads to it. */
export function distancesHome(reach: Reach): (number | null)[] {
  const { places } = reach;
  const distances: (number | null)[] = places.map(() => null);
  const cameFrom: number[][] = places.map(() => []);
  for (const [from, place] of places.entries()) for (const { to } of place.ways) cameFrom[to]?.push(from);
  let edge = places.flatMap((place, index) => (place.isHome ? [index] : []));
  for (let distance = 0; edge.length > 0; distance += 1) {
    const next: number[] = [];
    for (const index of edge) {
      if (distances[index] !== null) continue;
      distances[index] = distance;
      next.push(...(cameFrom[index] ?? []));
    }
    edge = next;
  }
  return distances;
}
