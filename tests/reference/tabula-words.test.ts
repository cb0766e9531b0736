import { expect, test } from 'vitest';
import { jaccard, overlapOfKinds } from '../../shared/assemblage/index.ts';

test('R package tabula, test_index.R, lists of animals: Jaccard 0.142857 (RF, 0.14)', () => {
  const overlap = overlapOfKinds(['horse', 'dog', 'cat', 'cow'], ['sheep', 'cat', 'bird', 'bull']);
  expect(jaccard(overlap).value).toBeCloseTo(0.142857, 6);
});
