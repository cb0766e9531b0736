import { describe, expect, test } from 'vitest';
import { intervalScore } from '../../shared/estimating/index.ts';

// Formula: Gneiting & Raftery 2007 (JASA 102: 359-378); Winkler 1972. Numbers computed by hand from it (DER).
describe('Gneiting & Raftery 2007, interval score: (u − l) + (2/α)(l − x) below, + (2/α)(x − u) above', () => {
  test.each([
    { name: 'inside costs the width', lower: 20, upper: 60, truth: 40, expected: 40 },
    { name: 'ten below costs ten for each', lower: 20, upper: 60, truth: 10, expected: 140 },
    { name: 'the edge is inside', lower: 20, upper: 60, truth: 60, expected: 40 },
  ])('$name', ({ lower, upper, truth, expected }) => {
    const score = intervalScore({ lower, upper }, truth, 0.2);
    expect(score.value).toBeCloseTo(expected, 9);
  });

  test('a reversed interval is refused, not swapped', () => {
    expect(intervalScore({ lower: 60, upper: 20 }, 40, 0.2)).toEqual({
      value: null,
      why: 'interval-reversed',
    });
  });
});
