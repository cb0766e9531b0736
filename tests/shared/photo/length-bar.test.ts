import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { barLength, firstBar, moveEnd, SHRINK_TRIES, sidesWithin } from '../../../shared/photo/index.ts';

describe('a bar over a picture', () => {
  test('is as long as its ends are apart: 3, 4, 5', () => {
    expect(
      barLength([
        { x: 10, y: 10 },
        { x: 310, y: 410 },
      ]),
    ).toBe(500);
  });

  test('is never without a length, which would be no scale', () => {
    const spot = { x: 7, y: 7 };
    expect(barLength([spot, spot])).toBe(1);
  });

  test('begins within the picture, and with the length it is given', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 1000 }),
        fc.integer({ min: 1, max: 1000 }),
        fc.double({ min: 0.01, max: 1, noNaN: true }),
        (widthPx, heightPx, share) => {
          const lengthPx = Math.max(1, Math.round(Math.hypot(widthPx, heightPx) * share - 0.5));
          const bar = firstBar(widthPx, heightPx, lengthPx);
          expect(barLength(bar)).toBe(lengthPx);
          for (const { x, y } of bar) {
            expect(x).toBeGreaterThanOrEqual(-1e-9);
            expect(x).toBeLessThanOrEqual(widthPx + 1e-9);
            expect(y).toBeGreaterThanOrEqual(-1e-9);
            expect(y).toBeLessThanOrEqual(heightPx + 1e-9);
          }
        },
      ),
    );
  });

  test('lies along the longer side', () => {
    expect(firstBar(1000, 600, null)).toEqual([
      { x: 100, y: 300 },
      { x: 900, y: 300 },
    ]);
    expect(firstBar(600, 1000, null)).toEqual([
      { x: 300, y: 100 },
      { x: 300, y: 900 },
    ]);
  });

  test('has ends that stay in the picture', () => {
    const picture = { widthPx: 100, heightPx: 50 };
    const bar = firstBar(100, 50, null);
    expect(moveEnd(bar, 0, { x: -20, y: 70 }, picture)).toEqual([{ x: 0, y: 50 }, bar[1]]);
    expect(moveEnd(bar, 1, { x: 130, y: -1 }, picture)).toEqual([bar[0], { x: 100, y: 0 }]);
  });
});

describe('sides are shrunk', () => {
  test.each([
    { from: [4000, 3000], to: [1000, 750] },
    { from: [3000, 4000], to: [750, 1000] },
    { from: [640, 480], to: [640, 480] },
    { from: [9000, 3], to: [1000, 1] },
  ] as const)('$from become $to', ({ from, to }) => {
    const { widthPx, heightPx } = sidesWithin(from[0], from[1], 1000);
    expect([widthPx, heightPx]).toEqual(to);
  });

  test('and every try is smaller or less fine than the one before', () => {
    for (const [index, { longestPx, quality }] of SHRINK_TRIES.entries()) {
      const before = SHRINK_TRIES[index - 1];
      if (before !== undefined) expect(longestPx * quality).toBeLessThan(before.longestPx * before.quality);
    }
  });
});
