import type { Answer } from './answer.ts';
import { nearestChoice } from './score-choice.ts';

/** How far apart by ratio two comparisons must be to be told apart (judgement). */
export const LEAST_RATIO = 2.5;

/** Those of rising candidates, going one way from the record, that are each far enough from the last and from the amount. */
function further<Candidate extends { readonly amount: number }>(
  candidates: readonly Candidate[],
  amount: number,
  start: number,
  wanted: number,
): Candidate[] {
  const chosen: Candidate[] = [];
  let last = start;
  for (const candidate of candidates) {
    if (chosen.length === wanted) break;
    const ratioTo = (other: number): number => Math.max(candidate.amount / other, other / candidate.amount);
    if (ratioTo(last) < LEAST_RATIO || ratioTo(amount) < LEAST_RATIO) continue;
    chosen.push(candidate);
    last = candidate.amount;
  }
  return chosen;
}

/**
 * Comparisons to choose among for an amount: the nearest of the candidates at the place given (from 0), the rest
 * further and further from it, so that every two can be told apart.
 *
 * Draw the place by chance, never the middle of an odd count: the middle would be worth a guess.
 * @throws RangeError when the place is not in the list, or is its middle.
 * @example comparisonsFor(candidates, 26, 4, 2) // football, school day, day and night, week
 */
export function comparisonsFor<Candidate extends { readonly amount: number }>(
  candidates: readonly Candidate[],
  amount: number,
  count: number,
  place: number,
): Answer<readonly Candidate[], 'too-few-comparisons'> {
  if (!(Number.isInteger(place) && place >= 0 && place < count && place !== count - 1 - place)) {
    throw new RangeError(`place must be one of ${count} and not their middle, received ${place}`);
  }
  if (candidates.length === 0) return { value: null, why: 'too-few-comparisons' };
  const rising = candidates.toSorted((a, b) => a.amount - b.amount);
  const nearest = nearestChoice(
    rising.map((candidate) => candidate.amount),
    amount,
  );
  const record = rising[nearest];
  if (record === undefined) return { value: null, why: 'too-few-comparisons' };
  const below = further(rising.slice(0, nearest).toReversed(), amount, record.amount, place);
  const above = further(rising.slice(nearest + 1), amount, record.amount, count - 1 - place);
  if (below.length + above.length + 1 < count) return { value: null, why: 'too-few-comparisons' };
  return { value: [...below.toReversed(), record, ...above] };
}
