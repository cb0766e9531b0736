import type { Stream } from '../chance/index.ts';
import { packRows, sharedBits, type PackedRows } from './bits.ts';
import type { Counts } from './counts.ts';
import { keepTally, type ChanceTally } from './tally.ts';
import { walkTables } from './walk-tables.ts';

/** The mean over all pairs of pits of the square of the kinds they share. */
function meanSquareShared(packed: PackedRows, pits: number): number {
  let total = 0;
  for (let first = 1; first < pits; first += 1) {
    for (let second = 0; second < first; second += 1) total += sharedBits(packed, first, second) ** 2;
  }
  return total / Math.max(1, (pits * (pits - 1)) / 2);
}

/**
 * Whether the whole site falls into pits that share more and pits that share less than chance makes them.
 *
 * The mean shared is the same for every table with these margins; the mean *square* grows when some pits share much and
 * others little. It takes so many values that a test at 5 % raises a false alarm in 5 % of sites and not in fewer.
 * Source: Roberts & Stone 1990, Oecologia 83: 560-567 (S² of island sharing); margins kept as in `bothMargins`.
 */
export function siteByChance(counts: Counts, shuffles: number, chance: Stream): ChanceTally {
  const pits = counts.rows.length;
  const tally = keepTally(meanSquareShared(packRows(counts.rows), pits));
  walkTables(counts.rows, shuffles, chance, (packed) => tally.add(meanSquareShared(packed, pits)));
  return tally.sum();
}
