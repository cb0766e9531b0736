import { brainerdRobinson } from './brainerd-robinson.ts';
import type { Counts } from './counts.ts';
import type { Measured } from './measured.ts';
import { jaccard, overlap, sorensenDice } from './overlap.ts';

/** The ways to say how alike two pits are. */
export const LIKENESSES = ['brainerd-robinson', 'jaccard', 'dice'] as const;

export type Likeness = (typeof LIKENESSES)[number];

/** How alike two rows of counts are: 0 to 200 by Brainerd-Robinson, 0 to 1 by the other two. */
export function likenessOf(by: Likeness, first: readonly number[], second: readonly number[]): Measured {
  switch (by) {
    case 'brainerd-robinson':
      return brainerdRobinson(first, second);
    case 'jaccard':
      return jaccard(overlap(first, second));
    case 'dice':
      return sorensenDice(overlap(first, second));
    default:
      return by satisfies never;
  }
}

/** How alike each pit is to each, in the order of the pits; null where there is no such measure (an empty pit). */
export const likenessMatrix = (counts: Counts, by: Likeness): readonly (readonly (number | null)[])[] =>
  counts.rows.map((first) => counts.rows.map((second) => likenessOf(by, first, second).value));
