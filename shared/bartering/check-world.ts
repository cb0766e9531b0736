import type { Band } from '../library/bands.ts';
import { BAND_PLAY, MOST_AIMLESS } from './band-play.ts';
import { checkParts } from './check-parts.ts';
import { tooLarge, trivialChain, unsolvable } from './check-play.ts';
import { prove, type Proof } from './proof.ts';
import type { World } from './world.ts';
import { listed, type WorldFault } from './world-fault.ts';

/** What a world was found to be. */
export interface CheckedWorld {
  readonly faults: readonly WorldFault[];
  /** Null where the parts do not fit together, so that nothing could be proved. */
  readonly proof: Proof | null;
}

const percent = (share: number): string => `${Math.round(100 * share)} %`;

function checkBand(world: World, proof: Proof, band: Band): WorldFault[] {
  const faults: WorldFault[] = [];
  const play = BAND_PLAY[band];
  if (world.bundle > play.bundle) {
    faults.push({
      code: 'bundle-over',
      grade: 'caution',
      path: ['bundle'],
      expected: `at most ${play.bundle} for ${band}`,
      received: `${world.bundle}`,
      mend: `write ${play.bundle}, or choose an older band`,
    });
  }
  if (world.traders.length > play.traders.most) {
    faults.push({
      code: 'traders-over',
      grade: 'caution',
      path: ['traders'],
      expected: `at most ${play.traders.most} for ${band}`,
      received: `${world.traders.length}`,
      mend: 'leave some traders out, or choose an older band',
    });
  }
  if (proof.par !== null && proof.par > play.par.most) {
    faults.push({
      code: 'par-over',
      grade: 'caution',
      path: ['aim'],
      expected: `at most ${play.par.most} handovers for ${band}`,
      received: `${proof.par}`,
      mend: 'start with something nearer the aim, or choose an older band',
    });
  }
  if (!play.mayStrand && proof.solvable === true && (proof.deadEnds?.withoutWayBack ?? 0) > 0) {
    const spoiling = world.goods.filter((good) => good.spoilsAfter !== null).map(({ id }) => id);
    const cure =
      spoiling.length > 0
        ? `let ${listed(spoiling)} keep longer`
        : 'let the gift be something not needed for a swap';
    faults.push({
      code: 'dead-end-final',
      grade: 'error',
      path: ['goods'],
      expected: `no dead end for ${band} that one cannot step back from`,
      received: `${proof.deadEnds?.withoutWayBack} of ${proof.positions} positions`,
      mend: `${cure}, or choose an older band`,
    });
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
    faults.push({
      code: 'world-trivial',
      grade: 'error',
      path: ['traders'],
      expected: `something to choose: aimless swapping gets at most ${percent(MOST_AIMLESS)} of what is possible`,
      received: `${percent(proof.aimless.average)}, whatever one swaps`,
      mend: 'let a trader offer you something you would take that does not lead to the aim, or leads there by a longer way',
    });
  }
  if (band !== null) faults.push(...checkBand(world, proof, band));
  return { faults, proof };
}
