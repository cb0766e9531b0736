import type { Stream } from '../chance/index.ts';
import { packRows, type PackedRows } from './bits.ts';

const RANGE = 0x1_0000_0000;

/**
 * Deals each kind to pits at random, in as many pits as before: one card a kind, a token for each pit.
 *
 * Pits do not keep how many kinds they hold. The exact chances are `fullSetTail`, `companyTail` and `sharedByDeal`.
 * Source of the deal: Knuth, The Art of Computer Programming vol. 2, algorithm S.
 */
export function dealKinds(
  rows: readonly (readonly number[])[],
  chance: Stream,
): { readonly packed: PackedRows; readonly next: () => void } {
  const packed = packRows(rows);
  const { words, bits } = packed;
  const spread = [...(rows[0] ?? []).keys()].map((kind) => rows.filter((row) => (row[kind] ?? 0) > 0).length);
  return {
    packed,
    next: () => {
      bits.fill(0);
      for (const [kind, pits] of spread.entries()) {
        const bit = 1 << (kind & 31);
        let place = kind >>> 5;
        let toPlace = pits;
        for (let left = rows.length; toPlace > 0; left -= 1) {
          if (chance.next() * left < toPlace * RANGE) {
            bits[place] = (bits[place] ?? 0) | bit;
            toPlace -= 1;
          }
          place += words;
        }
      }
    },
  };
}
