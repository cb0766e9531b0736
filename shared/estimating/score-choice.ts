import type { Answer } from './answer.ts';

export interface ChoiceScore {
  /** 1 for the record's choice; 0 for what the best fixed choice gets over the record and its mirror image. */
  readonly score: number;
  /** Doublings between the comparison chosen and the record's. */
  readonly doublingsOff: number;
  /** Half the doublings between the record's place in the list and its mirror image: what one point costs. */
  readonly doublingsAtStake: number;
}

/** The comparison nearest by ratio to an amount; of two as near the lesser. @throws RangeError on an empty list. */
export function nearestChoice(amounts: readonly number[], amount: number): number {
  let nearest = -1;
  let least = Infinity;
  amounts.forEach((candidate, index) => {
    const off = Math.abs(Math.log2(candidate / amount));
    if (off < least) {
      least = off;
      nearest = index;
    }
  });
  if (nearest < 0) throw new RangeError('no comparisons to choose among');
  return nearest;
}

/**
 * Scores a choice among comparisons that rise in size ("a story, a school day, a weekend").
 *
 * The mirror image of the third of four is the second: as the list lies before a child, either could be right. Any fixed
 * choice is at least half their distance off on average, and that distance is what one point costs: no fixed choice
 * averages above 0 over the two. A near comparison costs less than a far one. Where the right one is the middle of an
 * odd list, the middle would be worth something, so there is no score: add a comparison at one end.
 *
 * @throws RangeError when an index is no place in the list.
 * @example scoreChoice(0, 0, [0.25, 6, 48, 168]) // { value: { score: 1, … } }
 */
export function scoreChoice(
  chosen: number,
  record: number,
  amounts: readonly number[],
): Answer<ChoiceScore, 'middle-is-right'> {
  const ratio = (first: number, second: number): number => {
    const a = amounts[first];
    const b = amounts[second];
    if (a === undefined || b === undefined)
      throw new RangeError(`${first} or ${second} is not among ${amounts.length} choices`);
    return Math.abs(Math.log2(a / b));
  };
  const mirror = amounts.length - 1 - record;
  const doublingsAtStake = ratio(mirror, record) / 2;
  if (doublingsAtStake === 0) return { value: null, why: 'middle-is-right' };
  const doublingsOff = ratio(chosen, record);
  return { value: { score: 1 - doublingsOff / doublingsAtStake, doublingsOff, doublingsAtStake } };
}
