import { uniformBelow, type Stream } from '../chance/index.ts';

/** Counts being dealt again in place: read `counts` after each `next`. */
export interface FindDealer {
  /** Pit after pit, the count of each kind: pit p's kind k stands at p × kinds + k. */
  readonly counts: Uint32Array;
  readonly next: () => void;
}

/**
 * Puts all finds in one heap and deals them out again, each pit getting as many as it had: what pupils do by hand.
 *
 * Every find is dealt as if on its own, so pieces of one pot or one nutshell make chance look rarer than it is.
 * Source of the shuffle: Knuth, The Art of Computer Programming vol. 2, algorithm P.
 */
export function dealFinds(rows: readonly (readonly number[])[], chance: Stream): FindDealer {
  const kinds = rows[0]?.length ?? 0;
  const counts = new Uint32Array(rows.length * kinds);
  const sizes = rows.map((row) => row.reduce((total, count) => total + count, 0));
  const heap = Uint32Array.from(
    rows.flatMap((row) => row.flatMap((count, kind) => Array.from({ length: count }, () => kind))),
  );
  const below = uniformBelow; // called a million times: kept at hand
  return {
    counts,
    next: () => {
      counts.fill(0);
      let last = heap.length - 1;
      for (const [pit, size] of sizes.entries()) {
        const start = pit * kinds;
        // Where this pit takes all that is left there is nothing to draw.
        const isRest = size > last;
        for (let left = size; left > 0; left -= 1) {
          const taken = isRest ? last : below(chance, last + 1);
          const kind = heap[taken] ?? 0;
          heap[taken] = heap[last] ?? 0;
          heap[last] = kind;
          counts[start + kind] = (counts[start + kind] ?? 0) + 1;
          last -= 1;
        }
      }
    },
  };
}
