import { expect, test } from 'vitest';
import { jaccard, overlap, shannon, simpson, sorensenDice } from '../../shared/assemblage/index.ts';

// prettier-ignore
const birdsFirst = [1.4, 4.3, 2.9, 8.6, 4.2, 15.7, 2.0, 50, 1, 11.4, 11.4, 4.3, 13.0, 14.3, 8.6, 7.1, 10.0, 1.4, 2.9, 5.7, 1.4, 11.4, 2.9, 4.3, 1.4, 2.9];
// prettier-ignore
const birdsSecond = [0, 0, 0, 2.9, 0, 0, 0, 10, 0, 0, 5.7, 2.5, 5.7, 8.6, 5.7, 2.9, 0, 0, 2.9, 0, 0, 5.7, 0, 2.9, 0, 2.9];
const oakwood = [35, 26, 25, 21, 16, 11, 6, 5, 3, 3, 3, 3, 3, 2, 2, 2, 1, 1, 1, 1];
// prettier-ignore
const moths = [1, 3, 2, 1, 4, 5, 1, 1, 18, 1, 2, 63, 2, 1, 1, 1, 16, 15, 60, 1, 1, 8, 16, 127, 9, 18, 3, 4, 3, 11, 6, 7, 8, 63, 17];

test('Magurran 1988, pp. 165-166, birds: Jaccard 0.461538 (RF, 0.46 in R package tabula)', () => {
  expect(jaccard(overlap(birdsFirst, birdsSecond)).value).toBeCloseTo(0.461538, 6);
});

test('Magurran 1988, pp. 165-166, birds: Sørensen 0.631579 (RF, 0.63 in R package tabula)', () => {
  expect(sorensenDice(overlap(birdsFirst, birdsSecond)).value).toBeCloseTo(0.631579, 6);
});

test('Magurran 1988, p. 145, Oakwood birds: Shannon 2.407983 nats (RF, tabula test_index.R; the book has 2.404 by hand rounding)', () => {
  expect(shannon(oakwood).nats.value).toBeCloseTo(2.407983, 6);
});

test('Magurran 1988, p. 145, Oakwood birds: evenness 0.803804 (RF, tabula 0.804; the book 0.8025)', () => {
  expect(shannon(oakwood).evenness.value).toBeCloseTo(0.803804, 6);
});

test('Magurran 1988, p. 63, moths: Simpson 0.117683, that is 1/8.50 (RF, tabula test_index.R 0.118)', () => {
  const { dominance, diversity, reciprocal } = simpson(moths);
  expect(dominance.value).toBeCloseTo(0.117683, 6);
  expect(diversity.value).toBeCloseTo(0.882317, 6);
  expect(reciprocal.value).toBeCloseTo(8.5, 2);
});
