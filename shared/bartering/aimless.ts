import { pick, stream, type Stream } from '../chance/index.ts';
import type { Reach } from './explore.ts';
import { gather, type Gathering } from './gathering.ts';
import { nameStep } from './handover.ts';
import { legalSteps } from './legal.ts';
import { after, isHome, startOf, type Step } from './position.ts';
import type { Handover, World } from './world.ts';

/** What aimless play gets: every allowed handover as likely, until the aim or until nothing more can pass. */
export interface Aimless {
  /** The mean of par / handovers, 0 where the aim is not reached. From 0 to 1. */
  readonly average: number;
  /** The share of aimless plays that reach the aim. */
  readonly reachesAim: number;
  /** The share that reach it in as few handovers as can be. */
  readonly atPar: number;
  /** `exact`: worked out over everything that can happen. `sampled`: from that many seeded plays. */
  readonly how: 'exact' | 'sampled';
  readonly plays: number | null;
}

/** Worked out exactly: the chance of each place, handover by handover. */
export function aimlessOf(reach: Reach, par: number): Aimless {
  let chances = new Map([[0, 1]]);
  let average = 0;
  let reachesAim = 0;
  let atPar = 0;
  for (let made = 0; chances.size > 0; made += 1) {
    const next = new Map<number, number>();
    for (const [index, chance] of chances) {
      const place = reach.places[index];
      if (place === undefined) continue;
      if (place.isHome) {
        reachesAim += chance;
        average += made === 0 ? chance : (chance * par) / made;
        if (made === par) atPar += chance;
      }
      for (const { to } of place.ways) next.set(to, (next.get(to) ?? 0) + chance / place.ways.length);
    }
    chances = next;
  }
  return { average, reachesAim, atPar, how: 'exact', plays: null };
}

/** One play, every step that may be made as likely, to the aim or until there is none. */
function wander(gathering: Gathering, chance: Stream): readonly Step[] {
  let position = startOf(gathering);
  const made: Step[] = [];
  while (!isHome(gathering, position)) {
    const steps = legalSteps(gathering, position);
    const step = steps.length === 0 ? undefined : pick(chance, steps);
    if (step === undefined) break;
    made.push(step);
    position = after(gathering, position, step);
  }
  return made;
}

/** One aimless play: what guessing looks like in this kind. */
export function aimlessPlay(world: World, chance: Stream): Handover[] {
  const gathering = gather(world);
  return wander(gathering, chance).map((step) => nameStep(gathering, step));
}

/** How many handovers one play took to the aim; null where it never got there. Places looked at already are not looked at again. */
function lengthOfOne(reach: Reach, chance: Stream): number | null {
  const { gathering, places, looked } = reach;
  let index = 0;
  let made = 0;
  let place = places[0];
  while (place !== undefined && !place.isHome && index < looked) {
    if (place.ways.length === 0) return null;
    index = pick(chance, place.ways).to;
    place = places[index];
    made += 1;
  }
  let position = place?.position ?? startOf(gathering);
  for (; !isHome(gathering, position); made += 1) {
    const steps = legalSteps(gathering, position);
    if (steps.length === 0) return null;
    position = after(gathering, position, pick(chance, steps));
  }
  return made;
}

/** Estimated where there is too much to work out: the same seed for every world, so that the same world gets the same number. */
export function aimlessSampled(reach: Reach, par: number, plays: number): Aimless {
  const chance = stream('aimless');
  let average = 0;
  let reachesAim = 0;
  let atPar = 0;
  for (let play = 0; play < plays; play += 1) {
    const length = lengthOfOne(reach, chance);
    if (length === null) continue;
    reachesAim += 1 / plays;
    average += (length === 0 ? 1 : par / length) / plays;
    if (length === par) atPar += 1 / plays;
  }
  return { average, reachesAim, atPar, how: 'sampled', plays };
}
