import { expect, test } from 'vitest';
import {
  bestFixedAnswer,
  binsFor,
  countInBins,
  crowdOf,
  middleBins,
  percentError,
  quartiles,
} from '../../../shared/estimating/index.ts';

test('a class of eight: one wild guess does not move the middle, and zeros are set aside', () => {
  const crowd = crowdOf([2, 10, 20, 30, 30, 50, 1000, 0], { low: 19, high: 35 }, 'halves').value;
  expect(crowd).toMatchObject({ count: 7, setAside: 1, least: 2, greatest: 1000, median: 30, bestGuess: 20 });
  expect(crowd?.quartiles).toEqual({ lower: 10, middle: 30, upper: 50 });
  expect(crowd?.medianDoublingsOff).toBe(0);
  expect(crowd?.nearerThanMedian).toBe(0);
  expect(crowd?.asNearAsMedian).toBe(3);
});

test('one guess has a middle but no quartiles when the median is left out', () => {
  expect(crowdOf([7], { low: 1, high: 2 }, 'halves').value?.quartiles).toBeNull();
  expect(quartiles([7], 'halves')).toEqual({ value: null, why: 'too-few-values' });
  expect(quartiles([], 'hinges')).toEqual({ value: null, why: 'no-values' });
});

test('bins are cut at round numbers and cover the line', () => {
  expect(binsFor({ from: 5, to: 50 })).toEqual([
    { from: 5, to: 10 },
    { from: 10, to: 20 },
    { from: 20, to: 50 },
  ]);
  expect(binsFor({ from: 0.05, to: 0.5 })).toEqual([
    { from: 0.05, to: 0.1 },
    { from: 0.1, to: 0.2 },
    { from: 0.2, to: 0.5 },
  ]);
  expect(() => binsFor({ from: 0, to: 5 })).toThrow(RangeError);
  expect(countInBins([5, 9.9, 10, 50, 51, 4], binsFor({ from: 5, to: 50 }))).toEqual({
    counts: [2, 1, 1],
    outside: 2,
  });
});

test('hands up: the middle falls in a bin, or between two', () => {
  expect(middleBins([3, 10, 4])).toEqual({ value: [1] });
  expect(middleBins([5, 0, 5])).toEqual({ value: [0, 2] });
  expect(middleBins([0, 0])).toEqual({ value: null, why: 'no-values' });
});

test('the best fixed answer over items is found, and none is null', () => {
  const items = [1, 2, 9];
  const off = (item: number, answer: number) => -Math.abs(item - answer);
  expect(bestFixedAnswer(items, [1, 2, 9], off)).toEqual({ answer: 2, averageScore: -8 / 3 });
  expect(bestFixedAnswer(items, [], off)).toBeNull();
});

test('a percentage of nothing is nothing', () => {
  expect(percentError(5, 0)).toEqual({ value: null, why: 'truth-is-zero' });
});
