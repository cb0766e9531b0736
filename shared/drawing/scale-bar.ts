import { markup, type Mark } from './mark.ts';
import { linePath } from './path.ts';

export interface ScaleBar {
  readonly markup: string;
  readonly widthMm: number;
  readonly footMm: number;
}

const LENGTHS_MM = [5, 10, 20, 30, 50, 100, 200, 300, 500, 1000] as const;

/** A bar of the longest round length that fits, its first half filled, with its length in words. */
export function scaleBar(x: number, y: number, roomMm: number, sizeMm: number): ScaleBar {
  const lengthMm = LENGTHS_MM.findLast((length) => length <= Math.max(roomMm, 5)) ?? 5;
  const tick = sizeMm * 0.013;
  const size = sizeMm * 0.058;
  const marks: Mark[] = [
    {
      ink: 'bar',
      path:
        linePath([
          [x, y - tick],
          [x, y + tick],
        ]) +
        linePath([
          [x, y],
          [x + lengthMm, y],
        ]) +
        linePath([
          [x + lengthMm, y - tick],
          [x + lengthMm, y + tick],
        ]),
      part: 'scale-bar',
    },
    {
      ink: 'fill',
      path: linePath(
        [
          [x, y - tick * 0.7],
          [x + lengthMm / 2, y - tick * 0.7],
          [x + lengthMm / 2, y + tick * 0.7],
          [x, y + tick * 0.7],
        ],
        true,
      ),
      part: 'scale-bar',
    },
  ];
  const words = lengthMm >= 100 ? `${lengthMm / 10} cm` : `${lengthMm} mm`;
  const text = `<text class="ink-text" fill="currentColor" stroke="none" font-size="${Math.round(size * 100) / 100}" x="${Math.round(x * 100) / 100}" y="${Math.round((y + tick + size) * 100) / 100}">${words}</text>`;
  return { markup: markup(marks) + text, widthMm: lengthMm, footMm: y + tick + size * 1.2 };
}
