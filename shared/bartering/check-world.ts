import type { Band } from '../library/bands.ts';
import { worldProblems } from '../words/en/world-problems.ts';
import { BAND_PLAY, MOST_AIMLESS } from './band-play.ts';
import { checkParts } from './check-parts.ts';
import { tooLarge, trivialChain, unsolvable } from './check-play.ts';
import { prove, type Proof } from './proof.ts';
import type { World } from './world.ts';
import { caution, error, type WorldFault } from './world-fault.ts';

/** What a world was found to be. */
export interface CheckedWorld {
  readonly faults: readonly WorldFault[];
  /** Null where the parts do not fit together, so that nothing could be proved. */
  readonly proof: Proof | null;
}

function checkBand(world: World, proof: Proof, band: Band): WorldFault[] {
  const faults: WorldFault[] = [];
  const play = BAND_PLAY[band];
  if (world.bundle > play.bundle) {
    const words = worldProblems.bundleOver(world.bundle, play.bundle, band);
    faults.push(caution({ code: 'bundle-over', path: ['bundle'], ...words }));
  }
  if (world.traders.length > play.traders.most) {
    const words = worldProblems.tradersOver(world.traders.length, play.traders.most, band);
    faults.push(caution({ code: 'traders-over', path: ['traders'], ...words }));
  }
  if (proof.par !== null && proof.par > play.par.most) {
    const words = worldProblems.parOver(proof.par, play.par.most, band);
    faults.push(caution({ code: 'par-over', path: ['aim'], ...words }));
  }
  const ends = proof.deadEnds?.withoutWayBack ?? 0;
  if (!play.mayStrand && proof.solvable === true && ends > 0) {
    const spoiling = world.goods.filter((good) => good.spoilsAfter !== null).map(({ id }) => id);
    const words = worldProblems.deadEndFinal(ends, proof.positions, spoiling, band);
    faults.push(error({ code: 'dead-end-final', path: ['goods'], ...words }));
  }
  return faults;
}

/**
 * Checks a hand-written world: parts that do not fit, an aim that is not clear, no chain, a chain of one,
 * and what does not suit the band (the youngest that plays it; null for no band in particular).
 *
 * @example checkWorld(world, '7-9').faults // []
 */
export function checkWorld(world: World, band: Band | null): CheckedWorld {
  const parts = checkParts(world);
  if (parts.some(({ code, grade }) => grade === 'error' && code !== 'aim-unclear'))
    return { faults: parts, proof: null };
  const proof = prove(world);
  const faults = [...parts];
  if (!proof.isComplete) faults.push(tooLarge(proof));
  // Where nothing is wanted for certain, that is the fault to mend first.
  if (proof.solvable === false && parts.every(({ code }) => code !== 'aim-unclear'))
    faults.push(unsolvable(world));
  if (proof.par === 1) faults.push(trivialChain(world, proof));
  if (proof.par !== null && proof.par > 1 && proof.aimless !== null && proof.aimless.average > MOST_AIMLESS) {
    const words = worldProblems.choiceTrivial(MOST_AIMLESS, proof.aimless.average);
    faults.push(error({ code: 'world-trivial', path: ['traders'], ...words }));
  }
  if (band !== null) faults.push(...checkBand(world, proof, band));
  return { faults, proof };
}
