import { stream } from '../chance/index.ts';
import type { Band } from '../library/bands.ts';
import { ringsOf } from './best-exchange.ts';
import { deal, type Deal } from './deal.ts';
import type { Gain, Proof } from './proof.ts';
import type { Handover } from './world.ts';

/** What a world comes to, in five lines. */
export interface SwapAnswer {
  /** Null where there was more than could be looked at. */
  readonly solvable: boolean | null;
  readonly par: number | null;
  readonly chains: number;
  readonly example: readonly Handover[] | null;
  /** Who gains by the example, and by how much. */
  readonly betterOff: readonly Gain[];
}

/** The short form of a proof. */
export const swapAnswer = ({ solvable, par, chains, example, betterOff }: Proof): SwapAnswer => ({
  solvable,
  par,
  chains,
  example,
  betterOff,
});

/** A deal for a class, with the rings of the best exchange. */
export interface FairAnswer extends Deal {
  readonly pupils: number;
  readonly band: Band;
  readonly seed: string;
  readonly bestRings: readonly (readonly number[])[];
}

/** A deal from a seed of any text. @throws RangeError as `deal` does. */
export function fairAnswer(pupils: number, band: Band, seed: string, goods: readonly string[]): FairAnswer {
  const dealt = deal({ pupils, band, goods }, stream(seed));
  return { pupils, band, seed, ...dealt, bestRings: ringsOf(dealt.cards, dealt.takesFrom) };
}
