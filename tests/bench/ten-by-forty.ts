import { countFinds, type Counts } from '../../shared/assemblage/index.ts';
import { stream, uniform, uniformBelow } from '../../shared/chance/index.ts';

/** Ten pits by forty kinds, nearly half of them present, up to six pieces of each. */
export function tenByForty(): Counts {
  const chance = stream('ten by forty');
  const finds = Array.from({ length: 400 }, (_, cell) => cell).flatMap((cell) =>
    uniform(chance) < 0.45
      ? [{ pit: `P${cell % 10}`, kind: `K${Math.floor(cell / 10)}`, count: 1 + uniformBelow(chance, 6) }]
      : [],
  );
  return countFinds(finds);
}
