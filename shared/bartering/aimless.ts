import { stream, uniformBelow, type Stream } from '../chance/index.ts';
import type { Reach } from './explore.ts';
import { gather, type Gathering } from './gathering.ts';
import { nameStep } from './handover.ts';
import { legalSteps } from './legal.ts';
import { after, isHome, startOf } from './position.ts';
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

function wander(
  gathering: Gathering,
  chance: Stream,
): { readonly handovers: Handover[]; readonly home: boolean } {
  let position = startOf(gathering);
  const handovers: Handover[] = [];
  while (!isHome(gathering, position)) {
    const steps = legalSteps(gathering, position);
    const step = steps.length === 0 ? undefined : steps[uniformBelow(chance, steps.length)];
    if (step === undefined) return { handovers, home: false };
    handovers.push(nameStep(gathering, step));
    position = after(gathering, position, step);
  }
  return { handovers, home: true };
}

/** One aimless play: what guessing looks like in this kind. */
export const aimlessPlay = (world: World, chance: Stream): Handover[] =>
  wander(gather(world), chance).handovers;

/** Estimated where there is too much to work out: the same seed for every world, so that the same world gets the same number. */
export function aimlessSampled(gathering: Gathering, par: number, plays: number): Aimless {
  const chance = stream('aimless');
  let average = 0;
  let reachesAim = 0;
  let atPar = 0;
  for (let play = 0; play < plays; play += 1) {
    const { handovers, home } = wander(gathering, chance);
    if (!home) continue;
    reachesAim += 1 / plays;
    average += par / Math.max(par, handovers.length) / plays;
    if (handovers.length === par) atPar += 1 / plays;
  }
  return { average, reachesAim, atPar, how: 'sampled', plays };
}
