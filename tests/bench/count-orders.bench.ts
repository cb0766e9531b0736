import { expect, test } from 'vitest';
import { countOrders } from '../../shared/ordering/index.ts';
import { numbered, ordered } from '../shared/ordering/steps.ts';

/** Milliseconds for twelve steps, the first time. */
const LIMIT_MS = 10;

// Expected counts by another program: dynamic programming over subsets in Python (DER).
test.each([
  { name: 'a crown of six over six, the hardest to take apart', arrows: crown(6), expected: 604800n },
  {
    name: 'a fence of twelve',
    arrows: Array.from({ length: 11 }, (_, i) => (i % 2 === 0 ? [i, i + 1] : [i + 1, i])),
    expected: 2702765n,
  },
  { name: 'twelve free steps', arrows: [], expected: 479001600n },
])('twelve steps counted: $name', ({ name, arrows, expected }) => {
  const start = performance.now();
  const count = countOrders(ordered(numbered(12, arrows)));
  const took = performance.now() - start;
  console.info(`${name}: ${took.toFixed(2)} ms`);
  expect(count).toEqual({ count: expected });
  expect(took).toBeLessThan(LIMIT_MS);
});

/** Each upper step needs every lower one but its own. */
function crown(size: number): (readonly number[])[] {
  const places = Array.from({ length: size }, (_, place) => place);
  return places.flatMap((low) => places.filter((high) => high !== low).map((high) => [low, size + high]));
}
