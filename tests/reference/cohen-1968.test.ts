import { expect, test } from 'vitest';
import { cohenKappa, weightedKappa } from '../../shared/agreement/index.ts';

// Source: Cohen 1968, Psychological Bulletin 70: 213-220, matrix and results as given in the R package psych,
// help page cohen.kappa. Status RF.
const shares = [
  [0.44, 0.07, 0.09],
  [0.05, 0.2, 0.05],
  [0.01, 0.03, 0.06],
];

test('Cohen 1968, matrix of the psych help page: kappa .492', () => {
  expect(cohenKappa(shares).value).toBeCloseTo(0.491525, 6);
});

test('Cohen 1968, matrix of the psych help page: weighted kappa .348', () => {
  const disagreementWeights = [
    [0, 1, 3],
    [1, 0, 6],
    [3, 6, 0],
  ];
  expect(weightedKappa(shares, disagreementWeights).value).toBeCloseTo(0.347826, 6);
});
