import { openCurve } from './curve.ts';
import { linePath } from './path.ts';
import { around, type Point } from './point.ts';

/** A closed area, as the points round it. */
export type Region = readonly Point[];

/** Whether a point lies inside, by counting crossings. Source: Shimrat 1962, CACM algorithm 112. */
export function isInside(region: Region, [x, y]: Point): boolean {
  let inside = false;
  let before = around(region, -1);
  for (const point of region) {
    if (point[1] > y !== before[1] > y) {
      const crossing = ((before[0] - point[0]) * (y - point[1])) / (before[1] - point[1]) + point[0];
      if (x < crossing) inside = !inside;
    }
    before = point;
  }
  return inside;
}

/** The mean of the points round a region. */
export function middle(region: Region): Point {
  let [x, y] = [0, 0];
  for (const point of region) {
    x += point[0];
    y += point[1];
  }
  return [x / region.length, y / region.length];
}

/** Where along the edge the point nearest to a place stands. */
function nearestIndex(region: Region, place: Point): number {
  let [best, least] = [0, Infinity];
  for (const [index, point] of region.entries()) {
    const distance = (point[0] - place[0]) ** 2 + (point[1] - place[1]) ** 2;
    if (distance < least) [best, least] = [index, distance];
  }
  return best;
}

interface Split {
  readonly sides: readonly [Region, Region];
  readonly path: string;
  readonly points: readonly Point[];
}

/** A region cut in two by a ridge; the ridge's ends are drawn to the nearest point of the edge. */
export function split(region: Region, ridge: readonly Point[], isJagged = false): Split {
  const from = nearestIndex(region, around(ridge, 0));
  const to = nearestIndex(region, around(ridge, -1));
  const course = [around(region, from), ...ridge.slice(1, -1), around(region, to)];
  const line = isJagged ? { path: linePath(course), points: course } : openCurve(course);
  const inner = line.points.slice(1, -1);
  const forth = walk(region, from, to);
  const back = walk(region, to, from);
  return {
    sides: [
      [...forth, ...[...inner].reverse()],
      [...back, ...inner],
    ],
    path: line.path,
    points: line.points,
  };
}

function walk(region: Region, from: number, to: number): Point[] {
  const result: Point[] = [];
  const count = (to - from + region.length) % region.length;
  for (let step = 0; step <= count; step += 1) result.push(around(region, from + step));
  return result;
}

/** The area of a region, mm2. */
export function area(region: Region): number {
  let twice = 0;
  let before = around(region, -1);
  for (const point of region) {
    twice += before[0] * point[1] - point[0] * before[1];
    before = point;
  }
  return Math.abs(twice) / 2;
}

/** The parts of a straight line that lie inside a region, each as its two ends. */
export function insideParts(region: Region, from: Point, to: Point): [Point, Point][] {
  const crossings: number[] = [];
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  let before = around(region, -1);
  for (const point of region) {
    const [ex, ey] = [point[0] - before[0], point[1] - before[1]];
    const cross = dx * ey - dy * ex;
    if (cross !== 0) {
      const along = ((before[0] - from[0]) * ey - (before[1] - from[1]) * ex) / cross;
      const part = ((before[0] - from[0]) * dy - (before[1] - from[1]) * dx) / cross;
      if (part >= 0 && part < 1 && along > 0 && along < 1) crossings.push(along);
    }
    before = point;
  }
  crossings.sort((a, b) => a - b);
  const stops = [0, ...crossings, 1];
  const result: [Point, Point][] = [];
  for (let index = 0; index + 1 < stops.length; index += 1) {
    const [start, end] = [stops[index] ?? 0, stops[index + 1] ?? 1];
    const half = (start + end) / 2;
    if (!isInside(region, [from[0] + dx * half, from[1] + dy * half])) continue;
    result.push([
      [from[0] + dx * start, from[1] + dy * start],
      [from[0] + dx * end, from[1] + dy * end],
    ]);
  }
  return result;
}
