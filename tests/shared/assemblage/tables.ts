import { countFinds, type Counts } from '../../../shared/assemblage/index.ts';
import { sharedBits } from '../../../shared/assemblage/bits.ts';
import { dealKinds } from '../../../shared/assemblage/deal-kinds.ts';
import { uniform, uniformBelow, type Stream } from '../../../shared/chance/index.ts';

/** A table of presence drawn at random, each cell filled with the given chance. */
export function randomPresence(pits: number, kinds: number, filled: number, chance: Stream): Counts {
  return {
    pits: Array.from({ length: pits }, (_, pit) => `P${pit + 1}`),
    kinds: Array.from({ length: kinds }, (_, kind) => `K${kind + 1}`),
    rows: Array.from({ length: pits }, () =>
      Array.from({ length: kinds }, () => (uniform(chance) < filled ? 1 : 0)),
    ),
  };
}

/** Pits of different sizes filled from one heap of finds: a site where chance alone did it. */
export function oneHeap(sizes: readonly number[], kinds: number, chance: Stream): Counts {
  const finds = sizes.flatMap((size, pit) =>
    Array.from({ length: size }, () => ({
      pit: `P${pit + 1}`,
      // The less of two draws: the first kinds are common, the last rare.
      kind: `K${Math.min(uniformBelow(chance, kinds), uniformBelow(chance, kinds)) + 1}`,
    })),
  );
  const named = (letter: string, count: number): string[] =>
    Array.from({ length: count }, (_, index) => `${letter}${index + 1}`);
  return countFinds(finds, named('P', sizes.length), named('K', kinds));
}

/** By dealing kinds: how often the first two pits share as many kinds, and how often the first two kinds lie together. */
export function dealt(
  counts: Counts,
  observed: number,
  chance: Stream,
  draws: number,
): { readonly atLeastShared: number; readonly together: number } {
  const { packed, next } = dealKinds(counts.rows, chance);
  let [atLeast, together] = [0, 0];
  for (let draw = 0; draw < draws; draw += 1) {
    next();
    if (sharedBits(packed, 0, 1) >= observed) atLeast += 1;
    if (packed.bits.some((row) => (row & 3) === 3)) together += 1;
  }
  return { atLeastShared: atLeast / draws, together: together / draws };
}
