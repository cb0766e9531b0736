import { expect, test } from 'vitest';
import { deal, gatheringGoods, makeWorld, prove, scoreChain } from '../../shared/bartering/index.ts';
import { stream } from '../../shared/chance/index.ts';

const goods = gatheringGoods();
const middle = (times: readonly number[]): number =>
  [...times].sort((a, b) => a - b)[times.length >> 1] ?? Infinity;
const timed = (work: () => unknown): number => {
  const began = performance.now();
  work();
  return performance.now() - began;
};

test('forty gatherings of 8 traders and 20 goods: each solved within 100 ms', () => {
  expect(goods).toHaveLength(20);
  const times = Array.from({ length: 40 }, (_, index) => {
    const made = makeWorld(
      { band: '11-14', traders: 8, chainLength: 4 + (index % 3), goods },
      stream(`speed-${index}`),
    );
    if (made.world === null) throw new Error(made.why.code);
    const { world } = made;
    return middle([1, 2, 3].map(() => timed(() => prove(world))));
  });
  console.info(
    `8 traders, 20 goods: middle ${middle(times).toFixed(1)} ms, longest ${Math.max(...times).toFixed(1)} ms`,
  );
  expect(Math.max(...times)).toBeLessThan(100);
});

test('a class of 36 dealt within 200 ms', () => {
  const swappable = goods.filter((good) => !good.onlyGiven && good.spoilsAfter === null).map(({ id }) => id);
  const times = Array.from({ length: 40 }, (_, index) =>
    timed(() => deal({ pupils: 36, band: '14-16', goods: swappable }, stream(`deal-${index}`))),
  );
  console.info(
    `36 pupils: middle ${middle(times).toFixed(1)} ms, longest ${Math.max(...times).toFixed(1)} ms`,
  );
  expect(Math.max(...times)).toBeLessThan(200);
});

test('a chain scored within 1 ms', () => {
  const made = makeWorld({ band: '11-14', traders: 8, chainLength: 5, goods }, stream('score'));
  if (made.world === null) throw new Error(made.why.code);
  const { world, proof } = made;
  const took = timed(() => {
    for (let time = 0; time < 200; time += 1)
      scoreChain(world, { par: 5, aimlessAverage: 0.1 }, proof.example ?? []);
  });
  console.info(`a score: ${(took / 200).toFixed(3)} ms`);
  expect(took / 200).toBeLessThan(1);
});
