import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { stream, uniform } from '../../../shared/chance/index.ts';
import { gapOf, lineFor, middleOf, mirrored, scoreNumber } from '../../../shared/estimating/index.ts';

const records = fc
  .record({
    middle: fc.double({ min: 0.05, max: 5000, noNaN: true }),
    below: fc.double({ min: 1, max: 2.5, noNaN: true }),
    above: fc.double({ min: 1, max: 2.5, noNaN: true }),
  })
  .map(({ middle, below, above }) => ({ low: middle / below, middle, high: middle * above }));
const sides = fc.constantFrom('low' as const, 'high' as const);

describe('a number', () => {
  test('inside the record’s range scores 1; the middle of the line scores 0', () => {
    fc.assert(
      fc.property(records, sides, (record, side) => {
        const line = lineFor(record, side);
        expect(scoreNumber(record.middle, record, line).value?.score).toBe(1);
        expect(scoreNumber(middleOf(line), record, line).value?.score).toBeCloseTo(0, 9);
      }),
    );
  });

  test('any number given to an item and its mirror image averages at most 0', () => {
    fc.assert(
      fc.property(records, sides, fc.double({ min: 0, max: 1, noNaN: true }), (record, side, place) => {
        const line = lineFor(record, side);
        const guess = line.from * (line.to / line.from) ** place;
        const image = { low: mirrored(record.high, line), high: mirrored(record.low, line) };
        const here = scoreNumber(guess, record, line).value?.score ?? Number.NaN;
        const there = scoreNumber(guess, image, line).value?.score ?? Number.NaN;
        expect((here + there) / 2).toBeLessThanOrEqual(1e-9);
      }),
    );
  });

  test('guesses drawn evenly from the gap average 0', () => {
    const record = { low: 19, middle: 26, high: 35 };
    const line = lineFor(record, 'low');
    const gap = gapOf(record, line);
    const chance = stream('guess');
    let sum = 0;
    for (let draw = 0; draw < 20_000; draw += 1) {
      const guess = gap.from * (gap.to / gap.from) ** uniform(chance);
      sum += scoreNumber(guess, record, line).value?.score ?? Number.NaN;
    }
    expect(Math.abs(sum / 20_000)).toBeLessThan(0.02);
  });

  test('nearer by ratio never scores less; a doubling off is near, three are far', () => {
    const record = { low: 19, middle: 26, high: 35 };
    const line = lineFor(record, 'low');
    const of = (guess: number) => scoreNumber(guess, record, line).value;
    expect(of(35)?.nearness).toBe('inside');
    expect(of(70)?.nearness).toBe('near');
    expect(of(9.5)?.nearness).toBe('near');
    expect(of(280)?.nearness).toBe('far');
    expect(of(70)?.score).toBeGreaterThan(of(140)?.score ?? Number.NaN);
    expect(of(9.5)?.score).toBeCloseTo(of(70)?.score ?? Number.NaN, 9);
  });

  test('zero, below and the middle being right have no score but a reason', () => {
    expect(scoreNumber(0, { low: 1, high: 2 }, { from: 1, to: 100 })).toEqual({
      value: null,
      why: 'not-above-zero',
    });
    expect(scoreNumber(5, { low: 8, high: 12 }, { from: 1, to: 100 })).toEqual({
      value: null,
      why: 'middle-is-right',
    });
  });
});

test('a line has round ends, holds the record and keeps its middle a doubling away', () => {
  expect(lineFor({ low: 19, middle: 26, high: 35 }, 'low')).toEqual({ from: 5, to: 1000 });
  expect(lineFor({ low: 19, middle: 26, high: 35 }, 'high')).toEqual({ from: 0.2, to: 200 });
  fc.assert(
    fc.property(records, sides, (record, side) => {
      const line = lineFor(record, side);
      const middle = middleOf(line);
      expect(line.from).toBeLessThan(record.low);
      expect(line.to).toBeGreaterThan(record.high);
      if (side === 'low') expect(middle).toBeGreaterThanOrEqual(2 * record.high * (1 - 1e-12));
      else expect(middle).toBeLessThanOrEqual((record.low / 2) * (1 + 1e-12));
    }),
  );
});
