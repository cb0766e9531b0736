import { aimlessOf, aimlessSampled, type Aimless } from './aimless.ts';
import { distancesHome, explore, MOST_PLACES, type Reach, type Way } from './explore.ts';
import { gather } from './gathering.ts';
import { nameStep, replay } from './handover.ts';
import { isSpoiled, type Step } from './position.ts';
import type { Handover, World } from './world.ts';

/** By how much one trader is better off after a chain, by their own wants, debts counted. */
export interface Gain {
  readonly trader: string;
  readonly gain: number;
}

/** Positions from which the aim is out of reach. */
export interface DeadEnds {
  readonly count: number;
  /** Those entered by what cannot be taken back: a gift, or a handover after which something spoiled. */
  readonly withoutWayBack: number;
}

/** All that is proved of a world. */
export interface Proof {
  /** Null where there was too much to look at and the aim was not met on the way. */
  readonly solvable: boolean | null;
  /** The fewest handovers that bring the aim home; null where none do. */
  readonly par: number | null;
  /** How many different lists of so few handovers there are; 0 where there is none. */
  readonly chains: number;
  /** One of them, the first in a stable order. */
  readonly example: readonly Handover[] | null;
  /** Who is better off by the example, and by how much. */
  readonly betterOff: readonly Gain[];
  readonly positions: number;
  readonly isComplete: boolean;
  /** Null where not everything could be looked at. */
  readonly deadEnds: DeadEnds | null;
  /** Null where the aim is out of reach. */
  readonly aimless: Aimless | null;
  /** How much has to be chosen, in bits: -log2 of the share of aimless plays that reach par. */
  readonly difficultyBits: number | null;
}

/** Seeded plays where everything is too much: a standard error under 0.03, in about a tenth of a second. */
const SAMPLED_PLAYS = 400;

/** The first shortest chain from a place: always the first way that leads a step nearer; empty at the aim or where none leads there. */
export function chainHome(reach: Reach, distances: readonly (number | null)[], from: number): Step[] {
  const chain: Step[] = [];
  let place = reach.places[from];
  for (let left = distances[from] ?? 0; left > 0; left -= 1) {
    const way: Way | undefined = place?.ways.find(({ to }) => distances[to] === left - 1);
    if (way === undefined) break;
    chain.push(way.step);
    place = reach.places[way.to];
  }
  return chain;
}

/** What each trader gains over a chain: the sum of what they gained at each handover. */
export function gainsOver(world: World, chain: readonly Handover[]): Gain[] {
  const sums = new Map<string, number>();
  const add = (trader: string, gain: number): void => void sums.set(trader, (sums.get(trader) ?? 0) + gain);
  for (const { handover, refusal, gains } of replay(world, chain).told) {
    if (refusal !== null) continue;
    add(world.pupil.id, gains.pupil);
    add(handover.with, gains.them);
  }
  return [...sums].map(([trader, gain]) => ({ trader, gain }));
}

function deadEndsOf(reach: Reach, distances: readonly (number | null)[]): DeadEnds {
  const dead = new Set<number>();
  const noWayBack = new Set<number>();
  for (const [index, distance] of distances.entries()) if (distance === null) dead.add(index);
  for (const [from, place] of reach.places.entries()) {
    if (dead.has(from)) continue;
    for (const { step, to } of place.ways) {
      if (!dead.has(to)) continue;
      const then = reach.places[to];
      const isGift = step.take.length === 0;
      const wentOff =
        then !== undefined &&
        reach.gathering.spoilsAfter.some(
          (_, good) =>
            isSpoiled(reach.gathering, then.position, good) &&
            !isSpoiled(reach.gathering, place.position, good),
        );
      if (isGift || wentOff) noWayBack.add(to);
    }
  }
  return { count: dead.size, withoutWayBack: noWayBack.size };
}

/**
 * Proves what can be proved of a world: whether the aim can be reached, in how few handovers, in how many ways,
 * where one can get stuck, and what aimless play would get.
 *
 * @throws RangeError when the world names goods it has not got; check a hand-written one first.
 */
export function prove(world: World, mostPlaces: number = MOST_PLACES): Proof {
  const gathering = gather(world);
  const reach = explore(gathering, mostPlaces);
  const distances = distancesHome(reach);
  const homes = reach.places.filter((place) => place.isHome);
  const nearest = Math.min(...homes.map((place) => place.depth));
  const isKnown = reach.isComplete || nearest <= reach.surelyTo;
  const base = { positions: reach.places.length, isComplete: reach.isComplete };
  const deadEnds = reach.isComplete ? deadEndsOf(reach, distances) : null;
  if (homes.length === 0 || !isKnown) {
    const solvable = homes.length > 0 ? true : reach.isComplete ? false : null;
    return {
      ...base,
      solvable,
      par: null,
      chains: 0,
      example: null,
      betterOff: [],
      deadEnds,
      aimless: null,
      difficultyBits: null,
    };
  }
  const example = chainHome(reach, distances, 0).map((step) => nameStep(gathering, step));
  const aimless = reach.isComplete
    ? aimlessOf(reach, nearest)
    : aimlessSampled(reach, nearest, SAMPLED_PLAYS);
  return {
    ...base,
    solvable: true,
    par: nearest,
    chains: homes.reduce((sum, place) => (place.depth === nearest ? sum + place.shortestWays : sum), 0),
    example,
    betterOff: gainsOver(world, example),
    deadEnds,
    aimless,
    difficultyBits: aimless.atPar > 0 ? 0 - Math.log2(aimless.atPar) : null,
  };
}
