import { TIE } from './tally.ts';

/** How far an order of pits is from the form in which likeness never rises when moving away from the diagonal. */
export interface RobinsonBreaks {
  /** Triples of pits, in order, whose outer two are more alike than one of the inner pairs; counted once a pair. */
  readonly events: number;
  /** The sum of how much more alike they are. */
  readonly excess: number;
}

/**
 * Counts the breaks of Robinson form for pits in an order: 0 events is the form itself.
 *
 * Source: Robinson 1951, American Antiquity 16: 293-301; counting events: Hubert, Arabie & Meulman 2001, Combinatorial Data Analysis.
 */
export function robinsonBreaks(
  similarity: readonly (readonly number[])[],
  order: readonly number[] = [...similarity.keys()],
): RobinsonBreaks {
  let events = 0;
  let excess = 0;
  for (const [left, first] of order.entries()) {
    const row = similarity[first] ?? [];
    for (let right = left + 2; right < order.length; right += 1) {
      const last = order[right] ?? 0;
      const outer = row[last] ?? 0;
      for (let middle = left + 1; middle < right; middle += 1) {
        const between = order[middle] ?? 0;
        const over = outer - (row[between] ?? 0);
        const beyond = outer - (similarity[between]?.[last] ?? 0);
        if (over > TIE) {
          events += 1;
          excess += over;
        }
        if (beyond > TIE) {
          events += 1;
          excess += beyond;
        }
      }
    }
  }
  return { events, excess };
}

/**
 * True where likeness never rises when moving away from the diagonal, with the pits as they stand.
 *
 * @example isRobinsonForm([[200, 150, 80], [150, 200, 120], [80, 120, 200]]) // true
 */
export const isRobinsonForm = (similarity: readonly (readonly number[])[]): boolean =>
  robinsonBreaks(similarity).events === 0 &&
  similarity.every((row, pit) => row.every((value) => value <= (row[pit] ?? 0) + TIE));

/** Fewer events, or as many with less excess. */
export const isBetter = (one: RobinsonBreaks, other: RobinsonBreaks): boolean =>
  one.events < other.events || (one.events === other.events && one.excess < other.excess - TIE);
