import { cardsToMove } from './cards-to-move.ts';
import { firstBroken, type BrokenPair } from './first-broken.ts';
import { readLaid, type Laid } from './laying.ts';
import { orderedPairs, type Precedence } from './precedence.ts';

/** What can be said of one laying. */
export interface OrderScore {
  /** (kept - broken) / pairs, from -1 to 1: 0 at guessing, 1 where every pair is kept, -1 where each is broken. */
  readonly score: number | null;
  /** Why there is no score: 'any-order' where no step must follow another. */
  readonly reason: 'any-order' | null;
  /** The share of pairs that laying by chance keeps: a half; null with the score. */
  readonly guess: number | null;
  /** Pairs of steps that have an order, drawn or implied. */
  readonly pairs: number;
  readonly kept: number;
  readonly broken: number;
  /** Pairs that the laying leaves open: laid at one place, or a card left out. They count as guessing would. */
  readonly open: number;
  /** kept / pairs, null where there are none. */
  readonly fractionKept: number | null;
  /** The pairs broken, [must come first, came first], in the order of the steps. */
  readonly brokenPairs: readonly (readonly [string, string])[];
  readonly firstBroken: BrokenPair | null;
  /** The fewest laid cards to lay elsewhere so that nothing is broken or tied. */
  readonly toMove: readonly string[];
  readonly left: readonly string[];
  readonly strays: readonly string[];
}

/**
 * Scores a laying from its pairs: every valid order scores 1, pairs without an order are never counted.
 *
 * Over the transitive closure; the same as Kendall's tau taken over those pairs only. A laying by chance puts each pair right
 * half the time, so the mean is exactly 0; a card left out, or all cards at one place, gains nothing over guessing.
 * Source of the form: Kendall 1938, Biometrika 30: 81-93; taken over the pairs of a partial order here (DER).
 * @example scoreOrder(precedence, ['rough-out', 'grind']).score // 1
 */
export function scoreOrder(precedence: Precedence, laid: Laid): OrderScore {
  const { places, left, strays } = readLaid(precedence, laid);
  const pairs = orderedPairs(precedence);
  const brokenPairs: (readonly [string, string])[] = [];
  let kept = 0;
  for (const [before, after] of pairs) {
    const [early, late] = [places[before] ?? null, places[after] ?? null];
    if (early === null || late === null || early === late) continue;
    if (early < late) kept += 1;
    else brokenPairs.push([precedence.ids[before] ?? '', precedence.ids[after] ?? '']);
  }
  const broken = brokenPairs.length;
  const isScored = pairs.length > 0;
  return {
    score: isScored ? (kept - broken) / pairs.length : null,
    reason: isScored ? null : 'any-order',
    guess: isScored ? 0.5 : null,
    pairs: pairs.length,
    kept,
    broken,
    open: pairs.length - kept - broken,
    fractionKept: isScored ? kept / pairs.length : null,
    brokenPairs,
    firstBroken: firstBroken(precedence, places),
    toMove: cardsToMove(precedence, places),
    left,
    strays,
  };
}
