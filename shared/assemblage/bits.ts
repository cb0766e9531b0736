/** How many bits of a 32-bit word are set. Source: Warren, Hacker's Delight, figure 5-2. */
export function countBits(word: number): number {
  let left = word - ((word >>> 1) & 0x5555_5555);
  left = (left & 0x3333_3333) + ((left >>> 2) & 0x3333_3333);
  return Math.imul((left + (left >>> 4)) & 0x0f0f_0f0f, 0x0101_0101) >>> 24;
}

/**
 * Rows of presence packed into words of 32 kinds: row r has words r × `words` up to the next row's first. Signed words, since
 * those are what bit operations give.
 */
export interface PackedRows {
  readonly words: number;
  readonly bits: Int32Array;
}

/** Rows without a kind in them. */
export function emptyRows(rows: number, kinds: number): PackedRows {
  const words = Math.max(1, Math.ceil(kinds / 32));
  return { words, bits: new Int32Array(rows * words) };
}

/** Packs counts that lie row after row; a count above 0 is present. Overwrites the rows packed before. */
export function packInto({ words, bits }: PackedRows, counts: ArrayLike<number>, kinds: number): void {
  bits.fill(0);
  for (let row = 0, cell = 0; row * words < bits.length; row += 1) {
    for (let kind = 0; kind < kinds; kind += 1, cell += 1) {
      const word = row * words + (kind >>> 5);
      if ((counts[cell] ?? 0) > 0) bits[word] = (bits[word] ?? 0) | (1 << (kind & 31));
    }
  }
}

/** Packs rows of counts; a count above 0 is present. */
export function packRows(rows: readonly (readonly number[])[]): PackedRows {
  const kinds = rows[0]?.length ?? 0;
  const packed = emptyRows(rows.length, kinds);
  packInto(packed, rows.flat(), kinds);
  return packed;
}

/** The kinds that two rows share. */
export function sharedBits({ words, bits }: PackedRows, first: number, second: number): number {
  let shared = 0;
  for (let word = 0; word < words; word += 1) {
    shared += countBits((bits[first * words + word] ?? 0) & (bits[second * words + word] ?? 0));
  }
  return shared;
}

/** The kinds that a row holds. */
export const heldBits = (packed: PackedRows, row: number): number => sharedBits(packed, row, row);
