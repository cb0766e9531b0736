import { expect, test } from 'vitest';
import {
  brainerdRobinson,
  companyTail,
  fisherExact,
  fullSetTail,
  jaccard,
  overlapOfKinds,
} from '../../shared/assemblage/index.ts';

test('Brainerd-Robinson: only proportions count, the same tenfold is 200 (DER, definition)', () => {
  expect(brainerdRobinson([5, 3, 2], [50, 30, 20]).value).toBeCloseTo(200, 9);
});

test('Brainerd-Robinson: nothing shared is 0 (DER, definition)', () => {
  expect(brainerdRobinson([5, 0], [0, 9]).value).toBeCloseTo(0, 9);
});

test('Brainerd-Robinson: an empty pit has no percentages (DER, definition)', () => {
  expect(brainerdRobinson([0, 0], [3, 4])).toEqual({ value: null, reason: 'empty' });
});

test('Jaccard of two empty pits is 0/0: none, with a reason (DER, house rule)', () => {
  expect(jaccard(overlapOfKinds([], []))).toEqual({ value: null, reason: 'both-empty' });
});

test('two kinds in 6 and 5 of 12 pits, together in 5: C(6,5)/C(12,5) = 6/792 (DER, scipy and fractions)', () => {
  expect(companyTail(12, 6, 5, 5)).toBeCloseTo(0.00757576, 8);
  expect(fisherExact([[5, 1], [0, 6]]).greater).toBeCloseTo(0.00757576, 8); // prettier-ignore
});

test('three kinds in 5, 4 and 4 of 8 pits, three pits with all: 0.04795918 (DER, hypergeometric convolution)', () => {
  expect(fullSetTail(8, [5, 4, 4], 3).value).toBeCloseTo(0.04795918, 8);
});
