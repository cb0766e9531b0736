import { expect, test } from 'vitest';
import { rankedProbabilityScore } from '../../shared/estimating/index.ts';

// Formula Epstein 1969 / Murphy 1971; computed by hand (DER): 0.2² + 0.7².
test('Epstein 1969, three ordered choices: 0.2, 0.5, 0.3 with the third true costs 0.53, undivided', () => {
  expect(rankedProbabilityScore([0.2, 0.5, 0.3], 2).value).toBeCloseTo(0.53, 9);
});

test('Epstein 1969: sure and right costs 0', () => {
  expect(rankedProbabilityScore([0, 1, 0], 1).value).toBeCloseTo(0, 12);
});

test('probabilities that do not sum to 1 are refused', () => {
  expect(rankedProbabilityScore([0.2, 0.5], 1)).toEqual({ value: null, why: 'sum-not-one' });
  expect(rankedProbabilityScore([1.2, -0.2], 1)).toEqual({ value: null, why: 'negative-probability' });
});
