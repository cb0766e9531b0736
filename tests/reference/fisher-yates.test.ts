import { expect, test } from 'vitest';
import { shuffle, stream } from '../../shared/chance/index.ts';
import { xoshiro128 } from '../../shared/chance/xoshiro.ts';

// Status DER, computed in Python: a house vector, so that a saved visit shuffles alike for ever.
test('Knuth, The Art of Computer Programming vol. 2, algorithm P with rejection, on xoshiro128** 1, 2, 3, 4', () => {
  expect(shuffle({ next: xoshiro128([1, 2, 3, 4]) }, [0, 1, 2, 3, 4, 5, 6, 7, 8, 9])).toEqual([
    7, 3, 1, 6, 2, 5, 4, 8, 9, 0,
  ]);
});

// Chi-square at 0.999 with 23 degrees of freedom, from scipy. Status DER.
const CRITICAL_VALUE_99_9 = 49.728;

/** Chi-square of 24,000 orders of four items against all 24 being as likely. */
function chiSquare(dealOne: () => readonly number[]): number {
  const counts = new Map<string, number>();
  for (let draw = 0; draw < 24_000; draw += 1) {
    const order = dealOne().join('');
    counts.set(order, (counts.get(order) ?? 0) + 1);
  }
  const missing = 24 - counts.size;
  return [...counts.values()].reduce((total, count) => total + (count - 1000) ** 2 / 1000, missing * 1000);
}

test('chi-square of 24,000 shuffles of four items stays under 49.728 (scipy, 23 degrees of freedom, 0.999)', () => {
  const chance = stream('shuffle-chi-square');
  expect(chiSquare(() => shuffle(chance, [0, 1, 2, 3]))).toBeLessThan(CRITICAL_VALUE_99_9);
});

test('the same chi-square catches a shuffle by sorting with a random comparison', () => {
  const chance = stream('shuffle-chi-square');
  const biased = (): readonly number[] => [0, 1, 2, 3].sort(() => (chance.next() < 0x8000_0000 ? -1 : 1));
  expect(chiSquare(biased)).toBeGreaterThan(CRITICAL_VALUE_99_9);
});
