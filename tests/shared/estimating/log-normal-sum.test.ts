import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { stream, uniform } from '../../../shared/chance/index.ts';
import {
  fromEnds,
  type LogNormal,
  meanOf,
  quantile,
  standardNormalBelow,
  standardNormalQuantile,
  sumQuantiles,
} from '../../../shared/estimating/index.ts';
import { MOST_PARTS } from '../../../shared/estimating/log-normal-sum.ts';

// Values from tables of the normal distribution (FM: Abramowitz & Stegun 1964, table 26.1).
test.each([
  { z: 0, below: 0.5 },
  { z: 1, below: 0.841344746 },
  { z: -1.96, below: 0.024997895 },
  { z: 3, below: 0.998650102 },
])('a share of $below lies below $z', ({ z, below }) => {
  expect(standardNormalBelow(z)).toBeCloseTo(below, 6);
  expect(standardNormalQuantile(below)).toBeCloseTo(z, 5);
});

test('far tails and refusals of the normal quantile', () => {
  // FM: AS 241 tables: p = 1e-20 at z = −9.262340.
  expect(standardNormalQuantile(1e-20)).toBeCloseTo(-9.26234, 4);
  expect(() => standardNormalQuantile(0)).toThrow(RangeError);
  expect(() => standardNormalQuantile(1)).toThrow(RangeError);
});

test('a log-normal from its ends', () => {
  // By hand: ln(41.2 / 3.495) / 3.2897 = 0.75.
  expect(fromEnds({ low: 3.495, middle: 12, high: 41.2 }).sigma).toBeCloseTo(0.75, 3);
  expect(quantile({ middle: 12, sigma: 0.75 }, 0.95)).toBeCloseTo(41.2, 1);
  expect(() => fromEnds({ low: 0, middle: 1, high: 2 })).toThrow(RangeError);
});

/** Box & Muller 1958: two normals from two uniforms; one is used. */
function simulate(parts: readonly LogNormal[], draws: number, seed: string): Float64Array {
  const chance = stream(seed);
  const sums = new Float64Array(draws);
  for (let draw = 0; draw < draws; draw += 1) {
    let sum = 0;
    for (const part of parts) {
      const radius = Math.sqrt(-2 * Math.log(1 - uniform(chance)));
      sum += part.middle * Math.exp(part.sigma * radius * Math.cos(2 * Math.PI * uniform(chance)));
    }
    sums[draw] = sum;
  }
  return sums.sort();
}

const named = (middle: number, sigma: number): LogNormal => ({ middle, sigma });
test.each([
  {
    name: 'a small axe: find, test, knap, grind, haft',
    parts: [named(1, 0.9), named(0.05, 0.5), named(0.25, 0.45), named(10, 0.55), named(12, 0.75)],
  },
  {
    name: 'a pecked axe with a mirror finish',
    parts: [named(1, 0.9), named(0.05, 0.5), named(15, 0.6), named(60, 0.55), named(12, 0.75)],
  },
  {
    name: 'pecking ruling grinding',
    parts: [named(1, 0.9), named(0.05, 0.5), named(15, 0.6), named(6, 0.55), named(12, 0.75)],
  },
  {
    name: 'an axe ground at its edge only, of mined flint',
    parts: [
      named(1, 0.9),
      named(0.05, 0.5),
      named(0.25, 0.45),
      named(2, 0.55),
      named(12, 0.75),
      named(1.7, 0.7),
    ],
  },
  {
    name: 'a haft and little else',
    parts: [named(1, 0.9), named(0.05, 0.5), named(0.3, 0.45), named(12, 0.75)],
  },
  { name: 'knapping beside grinding', parts: [named(0.25, 0.45), named(10, 0.55)] },
])('$name: ends and middle agree with 200,000 draws within 3 per cent', ({ parts, name }) => {
  const sums = simulate(parts, 200_000, name);
  const shares = [0.05, 0.25, 0.5, 0.75, 0.95];
  const found = sumQuantiles(parts.toReversed(), shares); // as the rows stand, the widest come last
  shares.forEach((share, index) => {
    const drawn = sums[Math.floor(share * sums.length)] ?? Number.NaN;
    expect(Math.abs((found[index] ?? Number.NaN) / drawn - 1)).toBeLessThan(0.03);
  });
});

test('the mean lies above the middle', () => {
  // By hand: 10 e^0.15125 = 11.633.
  expect(meanOf(named(10, 0.55))).toBeCloseTo(11.633, 3);
});

test('a sum of nothing is 0, of one part that part, of exact parts exact', () => {
  expect(sumQuantiles([], [0.05, 0.5])).toEqual([0, 0]);
  expect(sumQuantiles([named(0, 0.5)], [0.5])).toEqual([0]);
  expect(sumQuantiles([named(12, 0.75)], [0.95])[0]).toBeCloseTo(41.2, 1);
  expect(sumQuantiles([named(2, 0), named(3, 0)], [0.05])[0]).toBeCloseTo(5, 9);
});

test('the whole never falls when a part grows', () => {
  const parts = (grind: number) => [named(12, 0.75), named(grind, 0.55), named(0.25, 0.45), named(1, 0.9)];
  fc.assert(
    fc.property(
      fc.double({ min: 0.01, max: 500, noNaN: true }),
      fc.double({ min: 1, max: 1.2, noNaN: true }),
      (grind, factor) => {
        const small = sumQuantiles(parts(grind), [0.05, 0.5, 0.95]);
        const large = sumQuantiles(parts(grind * factor), [0.05, 0.5, 0.95]);
        small.forEach((value, index) => expect(large[index]).toBeGreaterThanOrEqual(value));
      },
    ),
    { numRuns: 40 },
  );
});

test('the high end of the whole is less than the sum of the high ends, the low end more', () => {
  const parts = [named(12, 0.75), named(10, 0.55)];
  const [low = 0, high = 0] = sumQuantiles(parts, [0.05, 0.95]);
  // 3.49 + 4.05 and 41.2 + 24.7, by hand.
  expect(low).toBeGreaterThan(7.54 * 1.2);
  expect(high).toBeLessThan(65.9 * 0.9);
});

test('more parts than makers are spread for are refused', () => {
  expect(() =>
    sumQuantiles(
      Array.from({ length: MOST_PARTS + 1 }, () => named(1, 0.5)),
      [0.5],
    ),
  ).toThrow(RangeError);
});
