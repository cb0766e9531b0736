import { comesBefore, type Precedence } from './precedence.ts';

/** A pair laid the wrong way round: `before` must come first, and came later (or at the same place). */
export interface BrokenPair {
  readonly before: string;
  readonly after: string;
  /** True where the lesson draws this arrow; false where it follows from several, with a step of them not laid. */
  readonly isDrawn: boolean;
}

/**
 * The broken pair to speak of first: among drawn arrows the one whose later step lies earliest in the line, and of those
 * with the same later step the one whose earlier step lies nearest. Implied pairs only where no drawn arrow is broken.
 */
export function firstBroken(precedence: Precedence, places: readonly (number | null)[]): BrokenPair | null {
  const steps = [...precedence.ids.keys()];
  const drawn = new Set(precedence.arrows.map(([before, after]) => `${before} ${after}`));
  let first: { readonly rank: readonly number[]; readonly pair: BrokenPair } | null = null;
  for (const before of steps) {
    for (const after of steps) {
      const [early, late] = [places[before] ?? null, places[after] ?? null];
      if (early === null || late === null || early < late || !comesBefore(precedence, before, after))
        continue;
      const isDrawn = drawn.has(`${before} ${after}`);
      const rank = [isDrawn ? 0 : 1, late, early];
      const pair = { before: precedence.ids[before] ?? '', after: precedence.ids[after] ?? '', isDrawn };
      if (first === null || isLess(rank, first.rank)) first = { rank, pair };
    }
  }
  return first?.pair ?? null;
}

const isLess = (a: readonly number[], b: readonly number[]): boolean => {
  const differs = a.findIndex((value, index) => value !== b[index]);
  return differs >= 0 && (a[differs] ?? 0) < (b[differs] ?? 0);
};
