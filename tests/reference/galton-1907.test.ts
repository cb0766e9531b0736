import { expect, test } from 'vitest';
import { crowdOf, percentError, probableError } from '../../shared/estimating/index.ts';

// Galton 1907, "Vox populi", Nature 75: 450-451: 787 cards, dressed weight of an ox in pounds.
// Lower percentiles re-found (RF) in Pearson, Life of Francis Galton vol. 2, p. 403; those from 65 % up are from memory (FM).
const percentiles: readonly (readonly [number, number])[] = [
  [5, 1074],
  [10, 1109],
  [15, 1126],
  [20, 1148],
  [25, 1162],
  [30, 1174],
  [35, 1181],
  [40, 1188],
  [45, 1197],
  [50, 1207],
  [55, 1214],
  [60, 1219],
  [65, 1225],
  [70, 1230],
  [75, 1236],
  [80, 1243],
  [85, 1254],
  [90, 1267],
  [95, 1293],
];
const outcome = 1198;

test('Galton 1907: probable error 37, half of 45 below and 29 above (DER)', () => {
  expect(probableError({ lower: 1162, middle: 1207, upper: 1236 })).toBeCloseTo(37, 9);
});

test('Galton 1907 as quoted by Wallis 2014 (Statistical Science 29: 420-424): the middlemost is 9 lb or 0.8 per cent off (RF)', () => {
  const error = percentError(1207, outcome).value;
  expect(error).toBeCloseTo(0.7513, 4);
  expect((error ?? 0).toFixed(1)).toBe('0.8');
});

test('Galton 1907: the middlemost of the printed percentiles is 1207, the quartiles 1162 and 1236', () => {
  const crowd = crowdOf(
    percentiles.map(([, pounds]) => pounds),
    { low: outcome, high: outcome },
    'hinges',
  );
  expect(crowd.value?.count).toBe(19);
  expect(crowd.value?.median).toBe(1207);
  // The nineteen percentiles stand 5 % apart: the fifth and fifteenth are the quartiles; hinges of nineteen values lie
  // half a step inside them, halves without the median meet them exactly.
  const halves = crowdOf(
    percentiles.map(([, pounds]) => pounds),
    { low: outcome, high: outcome },
    'halves',
  );
  expect(halves.value?.quartiles).toEqual({ lower: 1162, middle: 1207, upper: 1236 });
  // 1197, one pound off, is the best of the printed percentiles: the crowd was good, not the best single guess.
  expect(crowd.value?.bestGuess).toBe(1197);
  expect(crowd.value?.nearerThanMedian).toBe(1);
});

test('an empty tray of cards has no middle', () => {
  expect(crowdOf([], { low: 1, high: 2 }, 'halves')).toEqual({ value: null, why: 'no-values' });
});
