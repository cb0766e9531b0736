import { outline, shards } from '../outline.ts';
import { linePath } from '../path.ts';
import type { Point } from '../point.ts';
import { insideParts, middle, split, type Region } from '../region.ts';
import type { Drawer, Sketch } from '../sketch.ts';
import { faceOf } from './views.ts';

/** A black block: the end grain at its top shows growth rings, the sides crack into squares. */
export const charcoal: Drawer = (sketch) => {
  const { find, hand } = sketch;
  const [width, height] = [find.widthMm, find.lengthMm];
  const curve = outline(shards(8, hand), width, height, hand, 0);
  const parted = split(
    curve.points,
    [
      [0, height * 0.42],
      [width * 0.3, height * 0.5],
      [width * 0.64, height * 0.47],
      [width, height * 0.36],
    ],
    true,
  );
  const [one, two] = parted.sides;
  const [end, side] = middle(one)[1] < middle(two)[1] ? [one, two] : [two, one];
  return {
    face: faceOf(curve, width, height, [
      { ink: 'burnt', path: linePath(side, true), part: 'burnt' },
      { ink: 'gap', path: cracks(side, width, height, sketch), part: 'cracks' },
      { ink: 'ridge', path: rings(end, width, height, sketch), part: 'rings' },
    ]),
    more: () => [],
  };
};

/** Growth rings round a heart that lies off to one side, and two cracks that run out from it. */
function rings(end: Region, width: number, height: number, { isSmall }: Sketch): string {
  const heart: Point = [width * 0.36, height * 0.66];
  let path = '';
  const count = isSmall ? 4 : 7;
  for (let ring = 1; ring <= count; ring += 1) {
    const reach = (0.2 + (0.52 * ring) / count) * height;
    const points: Point[] = [];
    for (let step = 0; step <= 16; step += 1) {
      const angle = Math.PI * (1.02 + (0.96 * step) / 16);
      points.push([heart[0] + Math.cos(angle) * reach * 1.25, heart[1] + Math.sin(angle) * reach]);
    }
    path += clipped(end, points);
  }
  return path;
}

/** A line's pieces inside a region. */
function clipped(region: Region, points: readonly Point[]): string {
  const runs: Point[][] = [];
  for (const [index, point] of points.entries()) {
    const after = points[index + 1];
    if (after === undefined) break;
    for (const [from, to] of insideParts(region, point, after)) {
      const run = runs.at(-1);
      const last = run?.at(-1);
      if (run !== undefined && last !== undefined && Math.hypot(last[0] - from[0], last[1] - from[1]) < 0.01)
        run.push(to);
      else runs.push([from, to]);
    }
  }
  return runs.map((run) => linePath(run)).join('');
}

function cracks(side: Region, width: number, height: number, { hand, isSmall }: Sketch): string {
  let path = '';
  const lay = (from: Point, to: Point): void => {
    for (const [start, end] of insideParts(side, from, to)) {
      const bend: Point = [
        (start[0] + end[0]) / 2 + hand.wobble(width * 0.015),
        (start[1] + end[1]) / 2 + hand.wobble(height * 0.012),
      ];
      path += linePath([start, bend, end]);
    }
  };
  for (const part of isSmall ? [0.3, 0.66] : [0.22, 0.46, 0.72]) {
    lay([width * part, height * 0.4], [width * (part + hand.wobble(0.05)), height]);
  }
  for (const part of [0.6, 0.74, 0.88]) {
    const y = height * (part + hand.wobble(0.02));
    lay([width * hand.within(0, 0.2), y], [width * hand.within(0.75, 1), y + hand.wobble(height * 0.04)]);
  }
  return path;
}
