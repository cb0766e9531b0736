import { uniformBelow, type Stream } from '../chance/index.ts';
import type { PackedRows } from './bits.ts';
import { bothMargins } from './both-margins.ts';

/**
 * Visits `shuffles` tables with both margins kept, so that the table as dug stands at a random place among them.
 *
 * Some tables are walked to in one direction from the given one and the rest in the other, which makes the given table's
 * rank among them exactly fair however far apart two tables are.
 * Source: Besag & Clifford 1989, Biometrika 76: 633-642 (serial method).
 */
export function walkTables(
  rows: readonly (readonly number[])[],
  shuffles: number,
  chance: Stream,
  visit: (packed: PackedRows) => void,
): void {
  const shuffler = bothMargins(rows, chance);
  const before = uniformBelow(chance, shuffles + 1);
  for (let turn = 0; turn < shuffles; turn += 1) {
    if (turn === before) shuffler.restart();
    shuffler.next();
    visit(shuffler.packed);
  }
}
