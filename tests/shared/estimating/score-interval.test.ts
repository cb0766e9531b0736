import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { stream, uniform } from '../../../shared/chance/index.ts';
import {
  expectedLogIntervalScore,
  lineFor,
  logIntervalScore,
  type LogNormal,
  middleOf,
  mirrored,
  quantile,
  recordInterval,
  referenceInterval,
  scoreInterval,
} from '../../../shared/estimating/index.ts';

const alpha = 0.2;
const axe: LogNormal = { middle: 26, sigma: 0.47 };
const lineOf = (record: LogNormal, side: 'low' | 'high') =>
  lineFor({ low: quantile(record, 0.05), middle: record.middle, high: quantile(record, 0.95) }, side);

const records = fc.record({
  middle: fc.double({ min: 0.1, max: 3000, noNaN: true }),
  sigma: fc.double({ min: 0.1, max: 0.9, noNaN: true }),
});
const sides = fc.constantFrom('low' as const, 'high' as const);
const places = fc.tuple(
  fc.double({ min: 0, max: 1, noNaN: true }),
  fc.double({ min: 0, max: 1, noNaN: true }),
);

describe('an interval', () => {
  test('the record’s own scores 1 and nothing scores more', () => {
    fc.assert(
      fc.property(records, sides, places, (record, side, [a, b]) => {
        const line = lineOf(record, side);
        const own = scoreInterval(recordInterval(record, alpha), record, line, alpha).value;
        expect(own?.score).toBeCloseTo(1, 6);
        expect(own?.held).toBeCloseTo(0.8, 5);
        const span = line.to / line.from;
        const interval = {
          lower: line.from * span ** Math.min(a, b),
          upper: line.from * span ** Math.max(a, b),
        };
        expect(scoreInterval(interval, record, line, alpha).value?.score).toBeLessThanOrEqual(1 + 1e-6);
      }),
    );
  });

  test('the widest interval and a bare middle gain nothing', () => {
    fc.assert(
      fc.property(records, sides, (record, side) => {
        const line = lineOf(record, side);
        const middle = middleOf(line);
        expect(
          scoreInterval({ lower: line.from, upper: line.to }, record, line, alpha).value?.score,
        ).toBeLessThanOrEqual(1e-6);
        expect(
          scoreInterval({ lower: middle, upper: middle }, record, line, alpha).value?.score,
        ).toBeLessThanOrEqual(1e-6);
        const best = referenceInterval(record, line, alpha);
        expect(scoreInterval(best, record, line, alpha).value?.score).toBeCloseTo(0, 6);
      }),
    );
  });

  test('any fixed interval averages at most 0 over an item and its mirror image', () => {
    fc.assert(
      fc.property(records, sides, places, (record, side, [a, b]) => {
        const line = lineOf(record, side);
        const span = line.to / line.from;
        const interval = {
          lower: line.from * span ** Math.min(a, b),
          upper: line.from * span ** Math.max(a, b),
        };
        const image = { middle: mirrored(record.middle, line), sigma: record.sigma };
        const here = scoreInterval(interval, record, line, alpha).value?.score ?? Number.NaN;
        const there = scoreInterval(interval, image, line, alpha).value?.score ?? Number.NaN;
        expect((here + there) / 2).toBeLessThanOrEqual(1e-6);
      }),
    );
  });

  test('honest width wins: half as wide and twice as wide both score less', () => {
    const line = lineOf(axe, 'low');
    const scoreOf = (factor: number) => {
      const half = Math.exp(1.2816 * axe.sigma * factor);
      return (
        scoreInterval({ lower: axe.middle / half, upper: axe.middle * half }, axe, line, alpha).value
          ?.score ?? Number.NaN
      );
    };
    expect(scoreOf(1)).toBeGreaterThan(scoreOf(0.5));
    expect(scoreOf(1)).toBeGreaterThan(scoreOf(2));
    expect(scoreOf(0)).toBeLessThan(scoreOf(0.5));
  });

  test('what cannot be scored says why', () => {
    const line = lineOf(axe, 'low');
    expect(scoreInterval({ lower: 0, upper: 5 }, axe, line, alpha)).toEqual({
      value: null,
      why: 'not-above-zero',
    });
    expect(scoreInterval({ lower: 9, upper: 5 }, axe, line, alpha)).toEqual({
      value: null,
      why: 'interval-reversed',
    });
    const centred = { from: 2.6, to: 260 };
    expect(scoreInterval({ lower: 9, upper: 50 }, axe, centred, alpha)).toEqual({
      value: null,
      why: 'middle-is-right',
    });
  });
});

test('the expected cost agrees with the average of 100,000 drawn truths', () => {
  const chance = stream('truths');
  let sum = 0;
  const interval = { lower: 15, upper: 40 };
  for (let draw = 0; draw < 100_000; draw += 1) {
    const truth = quantile(axe, Math.max(uniform(chance), 1e-9));
    sum += logIntervalScore(interval, truth, alpha).value ?? Number.NaN;
  }
  expect(expectedLogIntervalScore(interval, axe, alpha)).toBeCloseTo(sum / 100_000, 1);
  // A truth known exactly: an interval below it by one doubling costs its width and ten doublings.
  expect(expectedLogIntervalScore({ lower: 5, upper: 20 }, { middle: 40, sigma: 0 }, alpha)).toBeCloseTo(
    12,
    9,
  );
});

test('with the answer and its mirror image far apart, the blind interval runs from the one’s 20 to the other’s 80 per cent', () => {
  const line = { from: 5, to: 1000 };
  const blind = referenceInterval(axe, line, alpha);
  // By hand: 26 e^(−0.8416 × 0.47) = 17.51; 5000 / 17.51 = 285.6.
  expect(blind.lower).toBeCloseTo(17.51, 1);
  expect(blind.upper).toBeCloseTo(285.6, 0);
});
