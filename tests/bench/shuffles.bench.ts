import { bench, describe } from 'vitest';
import { alikeByChance, bestGroup, countFinds, type Counts } from '../../shared/assemblage/index.ts';
import { stream, uniform, uniformBelow } from '../../shared/chance/index.ts';

/** Ten pits by forty kinds, about half of them present, up to six pieces of each. */
export function tenByForty(): Counts {
  const chance = stream('ten by forty');
  const finds = Array.from({ length: 400 }, (_, cell) => cell).flatMap((cell) =>
    uniform(chance) < 0.45
      ? [{ pit: `P${cell % 10}`, kind: `K${Math.floor(cell / 10)}`, count: 1 + uniformBelow(chance, 6) }]
      : [],
  );
  return countFinds(finds);
}

describe('10 pits × 40 kinds × 2,000 shuffles', () => {
  const counts = tenByForty();
  bench('presence, both margins kept, all 45 pairs', () => {
    alikeByChance(counts, { by: 'jaccard', shuffles: 2000, chance: stream('1') });
  });
  bench('finds dealt, all 45 pairs by Brainerd-Robinson', () => {
    alikeByChance(counts, { by: 'brainerd-robinson', shuffles: 2000, chance: stream('1') });
  });
  bench('best trio, both margins kept', () => {
    bestGroup(counts, { size: 3, fewest: 2, most: 5 }, 2000, stream('1'));
  });
});
