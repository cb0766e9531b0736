import { derive, type Stream } from '../chance/index.ts';
import { BAND_PLAY, MOST_AIMLESS } from './band-play.ts';
import { draftWorld } from './draft-world.ts';
import { idleBecause } from './idle.ts';
import { prove, type Proof } from './proof.ts';
import type { World } from './world.ts';
import type { WorldOrder } from './world-order.ts';

/** Why a world could not be made, with what to change. */
export type NoWorld =
  | { readonly code: 'goods-too-few'; readonly given: number; readonly needed: number }
  | { readonly code: 'goods-repeated'; readonly good: string }
  | { readonly code: 'aim-unknown'; readonly aim: string }
  | { readonly code: 'aim-not-swapped'; readonly aim: string }
  | { readonly code: 'traders-unfit'; readonly given: number; readonly least: number; readonly most: number }
  | { readonly code: 'chain-unfit'; readonly given: number; readonly least: number; readonly most: number }
  | { readonly code: 'keeping-goods-too-few'; readonly given: number; readonly needed: number }
  | { readonly code: 'luck-ran-out'; readonly tried: number };

export type MadeWorld =
  { readonly world: World; readonly proof: Proof } | { readonly world: null; readonly why: NoWorld };

/** Drafts looked at before giving up; measured: three in four will do. */
const MOST_DRAFTS = 200;
/** A made world must be looked at wholly, and quickly. */
const MOST_PLACES_MADE = 1_000;

/** Why an order cannot be met whatever is drawn; null when it may be. */
function unfit(order: WorldOrder): NoWorld | null {
  const { traders, par } = BAND_PLAY[order.band];
  const { goods, aim, chainLength } = order;
  if (!Number.isInteger(order.traders) || order.traders < traders.least || order.traders > traders.most) {
    return { code: 'traders-unfit', given: order.traders, ...traders };
  }
  if (!Number.isInteger(chainLength) || chainLength < par.least || chainLength > par.most) {
    return { code: 'chain-unfit', given: chainLength, ...par };
  }
  const twice = goods.find((good, index) => goods.findIndex(({ id }) => id === good.id) !== index);
  if (twice !== undefined) return { code: 'goods-repeated', good: twice.id };
  const chosen = goods.find(({ id }) => id === aim);
  if (aim !== undefined && chosen === undefined) return { code: 'aim-unknown', aim };
  if (aim !== undefined && chosen?.onlyGiven === true) return { code: 'aim-not-swapped', aim };
  const needed = chainLength + 3;
  if (goods.length < needed) return { code: 'goods-too-few', given: goods.length, needed };
  const keeping = goods.filter((good) => good.spoilsAfter === null && !good.onlyGiven).length;
  if (keeping < chainLength + 2)
    return { code: 'keeping-goods-too-few', given: keeping, needed: chainLength + 2 };
  return null;
}

/** True for a world worth playing: solved wholly, as long as asked, neither left to luck nor stranding those who may not be. */
function isFit(order: WorldOrder, proof: Proof): boolean {
  const { par, isComplete, aimless, deadEnds } = proof;
  if (par !== order.chainLength || !isComplete || aimless === null || deadEnds === null) return false;
  if (aimless.average > MOST_AIMLESS) return false;
  return BAND_PLAY[order.band].mayStrand || deadEnds.withoutWayBack === 0;
}

/**
 * Makes a world with one clear aim, proved to be solvable in exactly the handovers asked for.
 *
 * @example makeWorld({ band: '7-9', traders: 4, chainLength: 3, goods }, stream('7')).proof.par // 3
 */
export function makeWorld(order: WorldOrder, chance: Stream): MadeWorld {
  const why = unfit(order);
  if (why !== null) return { world: null, why };
  for (let tried = 1; tried <= MOST_DRAFTS; tried += 1) {
    const world = draftWorld(order, derive(chance, `world-${tried}`));
    if (world.traders.some((trader) => idleBecause(world, trader) !== null)) continue;
    const proof = prove(world, MOST_PLACES_MADE);
    if (isFit(order, proof)) return { world, proof };
  }
  return { world: null, why: { code: 'luck-ran-out', tried: MOST_DRAFTS } };
}
