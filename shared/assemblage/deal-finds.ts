import { uniformBelow, type Stream } from '../chance/index.ts';

/** Counts being dealt again in place: read `rows` after each `next`. */
export interface FindDealer {
  /** `rows[pit][kind]`, overwritten by each deal. */
  readonly rows: readonly (readonly number[])[];
  readonly next: () => void;
}

/**
 * Puts all finds in one heap and deals them out again, each pit getting as many as it had: what pupils do by hand.
 *
 * Every find is dealt as if on its own, so pieces of one pot or one nutshell make chance look rarer than it is.
 * Source of the shuffle: Knuth, The Art of Computer Programming vol. 2, algorithm P.
 */
export function dealFinds(given: readonly (readonly number[])[], chance: Stream): FindDealer {
  const rows = given.map((row) => row.map(() => 0));
  const sizes = given.map((row) => row.reduce((total, count) => total + count, 0));
  const heap = Uint32Array.from(
    given.flatMap((row) => row.flatMap((count, kind) => Array.from({ length: count }, () => kind))),
  );
  return {
    rows,
    next: () => {
      let last = heap.length - 1;
      for (const [pit, row] of rows.entries()) {
        row.fill(0);
        for (let left = sizes[pit] ?? 0; left > 0; left -= 1) {
          // The last find of the heap has nothing left to change places with.
          const taken = last > 0 ? uniformBelow(chance, last + 1) : 0;
          const kind = heap[taken] ?? 0;
          heap[taken] = heap[last] ?? 0;
          heap[last] = kind;
          row[kind] = (row[kind] ?? 0) + 1;
          last -= 1;
        }
      }
    },
  };
}
