import { expect, test } from 'vitest';
import { adjustedRandIndex } from '../../shared/agreement/index.ts';

test.each([
  {
    // Status DER; oracle sklearn.metrics.adjusted_rand_score.
    source: 'scikit-learn user guide, adjusted_rand_score (0.57): one group split',
    truth: [0, 0, 1, 1],
    answer: [0, 0, 1, 2],
    expected: 0.571429,
    digits: 6,
  },
  {
    // Status DER, computed with scikit-learn. Below 0 is right: worse than chance, and not clamped.
    source: 'Hubert & Arabie 1985, Journal of Classification 2: 193-218: worse than chance',
    truth: [0, 0, 1, 1, 2, 2],
    answer: [2, 1, 1, 0, 0, 2],
    expected: -0.25,
    digits: 6,
  },
  {
    // Status DER, by definition: names do not matter.
    source: 'Hubert & Arabie 1985, definition: the same groups by other names',
    truth: ['core', 'core', 'flake', 'flake', 'antler'],
    answer: ['x', 'x', 'z', 'z', 'y'],
    expected: 1,
    digits: 9,
  },
])('$source', ({ truth, answer, expected, digits }) => {
  expect(adjustedRandIndex(truth, answer).value).toBeCloseTo(expected, digits);
});
