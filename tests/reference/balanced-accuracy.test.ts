import { expect, test } from 'vitest';
import { balancedAccuracy } from '../../shared/agreement/index.ts';

// Status DER: mean of the recall of each class, (3/4 + 1/2) / 2.
test('scikit-learn doc string, balanced_accuracy_score: 0.625', () => {
  expect(balancedAccuracy([0, 1, 0, 0, 1, 0], [0, 1, 0, 0, 0, 1]).value).toBeCloseTo(0.625, 9);
});
