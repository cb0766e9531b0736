import { bench, describe } from 'vitest';
import { deal, gatheringGoods, makeWorld, prove, scoreChain } from '../../shared/bartering/index.ts';
import { stream } from '../../shared/chance/index.ts';

const goods = gatheringGoods();
const worlds = Array.from({ length: 12 }, (_, index) =>
  makeWorld({ band: '11-14', traders: 8, chainLength: 5, goods }, stream(`bench-${index}`)),
).flatMap((made) => (made.world === null ? [] : [made]));
const largest = worlds.reduce((most, made) => (made.proof.positions > most.proof.positions ? made : most));
const swappable = goods.filter((good) => !good.onlyGiven && good.spoilsAfter === null).map(({ id }) => id);

describe('bartering', () => {
  bench(
    `solve a gathering of 8 traders and 20 goods (${largest.proof.positions} positions; within 100 ms)`,
    () => {
      prove(largest.world);
    },
  );
  bench('deal for a class of 36 (within 200 ms)', () => {
    deal({ pupils: 36, band: '14-16', goods: swappable }, stream('36'));
  });
  bench('score a chain (within 1 ms)', () => {
    scoreChain(largest.world, { par: 5, aimlessAverage: 0.1 }, largest.proof.example ?? []);
  });
});
