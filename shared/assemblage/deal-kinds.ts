import { shuffle, type Stream } from '../chance/index.ts';
import type { FindDealer } from './deal-finds.ts';

/**
 * Deals each kind to pits at random, in as many pits as before: one card a kind, a token for each pit.
 *
 * Pits do not keep how many kinds they hold. The exact chances are `fullSetTail`, `companyTail` and `sharedByDeal`.
 */
export function dealKinds(given: readonly (readonly number[])[], chance: Stream): FindDealer {
  const rows = given.map((row) => row.map(() => 0));
  const kinds = [...(given[0] ?? []).keys()];
  const spread = kinds.map((kind) => given.filter((row) => (row[kind] ?? 0) > 0).length);
  return {
    rows,
    next: () => {
      for (const row of rows) row.fill(0);
      for (const kind of kinds) {
        for (const row of shuffle(chance, rows).slice(0, spread[kind])) row[kind] = 1;
      }
    },
  };
}
