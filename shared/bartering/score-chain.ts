import { gainsOver, type Gain } from './proof.ts';
import { replay, type Told } from './handover.ts';
import { holdingOf, isHome } from './position.ts';
import type { Handover, Holding, World } from './world.ts';

/** What a scorer has to know of a world; worked out once, when it is made. */
export interface Standard {
  /** The fewest handovers to the aim, 1 or more. */
  readonly par: number;
  /** The mean that aimless play gets, from 0 to below 1. */
  readonly aimlessAverage: number;
}

/** A score of a chain of swaps, with everything needed to check it by hand. */
export interface ChainScore {
  /** 1 at par, 0 for what aimless swapping gets on average, below 0 under that; null where aimless play always makes par. */
  readonly score: number | null;
  /** What aimless swapping gets: the mean of par / handovers. */
  readonly guess: number;
  readonly working: {
    readonly par: number;
    /** Handovers that happened; refused ones do not count. */
    readonly handovers: number;
    readonly reached: boolean;
    /** par / handovers where the aim is in hand at the end, else 0. */
    readonly share: number;
    readonly told: readonly Told[];
    readonly betterOff: readonly Gain[];
    readonly inHand: Holding;
  };
}

/**
 * Scores a chain: (share - guess) / (1 - guess), where share is par / handovers if the aim is in hand at the end, else 0.
 *
 * More swaps than needed make the share smaller; no swaps make it 0. So neither hoarding nor swapping on gains anything.
 *
 * @example scoreChain(world, { par: 2, aimlessAverage: 0.4 }, chainOfTwo).score // 1
 */
export function scoreChain(world: World, standard: Standard, handovers: readonly Handover[]): ChainScore {
  const { gathering, told, positions } = replay(world, handovers);
  const end = positions.at(-1);
  const made = told.filter(({ refusal }) => refusal === null);
  const reached = end !== undefined && isHome(gathering, end);
  const share = reached && made.length > 0 ? standard.par / made.length : 0;
  const guess = standard.aimlessAverage;
  return {
    score: guess < 1 ? (share - guess) / (1 - guess) : null,
    guess,
    working: {
      par: standard.par,
      handovers: made.length,
      reached,
      share,
      told,
      betterOff: gainsOver(
        world,
        made.map(({ handover }) => handover),
      ),
      inHand: end === undefined ? {} : holdingOf(gathering, end, 0),
    },
  };
}
