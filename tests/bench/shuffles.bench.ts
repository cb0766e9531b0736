import { expect, test } from 'vitest';
import { alikeByChance, bestGroup } from '../../shared/assemblage/index.ts';
import { stream } from '../../shared/chance/index.ts';
import { tenByForty } from './ten-by-forty.ts';

const counts = tenByForty();

/** Milliseconds, the least of several runs: other work on the machine only ever adds. Aim 50; the bound leaves room for a slower one. */
const LIMIT_MS = 100;

test.each([
  {
    name: 'presence, both margins kept, all 45 pairs',
    run: () => alikeByChance(counts, { by: 'jaccard', shuffles: 2000, chance: stream('1') }),
  },
  {
    name: 'finds dealt, all 45 pairs by Brainerd-Robinson',
    run: () => alikeByChance(counts, { by: 'brainerd-robinson', shuffles: 2000, chance: stream('1') }),
  },
  {
    name: 'best trio, both margins kept',
    run: () => bestGroup(counts, { size: 3, fewest: 2, most: 5 }, 2000, stream('1')),
  },
])('10 pits × 40 kinds × 2,000 shuffles: $name', ({ name, run }) => {
  run();
  const times: number[] = [];
  for (let turn = 0; turn < 9; turn += 1) {
    const start = performance.now();
    run();
    times.push(performance.now() - start);
  }
  const least = Math.min(...times);
  console.info(`${name}: ${least.toFixed(1)} ms`);
  expect(least).toBeLessThan(LIMIT_MS);
});
