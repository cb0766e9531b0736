import { boxOf, type Curve } from './curve.ts';
import type { Hand } from './hand.ts';
import { linePath } from './path.ts';
import { around, away, between, type Point } from './point.ts';
import { area, split } from './region.ts';

/** A jagged line, as a break runs. */
export function jagged(from: Point, to: Point, count: number, size: number, hand: Hand): Point[] {
  const points: Point[] = [from];
  const across = Math.atan2(to[1] - from[1], to[0] - from[0]) + Math.PI / 2;
  for (let index = 1; index < count; index += 1) {
    const place = between(from, to, index / count + hand.wobble(0.25 / count));
    points.push(away(place, across, (index % 2 === 0 ? 1 : -1) * size * hand.within(0.25, 1)));
  }
  return [...points, to];
}

/**
 * A curve with a piece broken off at a side, then fitted to its box again: what is recorded is the size of
 * what is left. `side` is the direction of the lost piece, radians, and `part` how much of the way is lost.
 */
export function breakOff(
  curve: Curve,
  widthMm: number,
  heightMm: number,
  side: number,
  part: number,
  hand: Hand,
): Curve {
  const heart: Point = [widthMm / 2, heightMm / 2];
  const reachX = Math.abs(Math.cos(side)) * widthMm + Math.abs(Math.sin(side)) * heightMm;
  const foot = away(heart, side, reachX * (0.5 - part));
  const long = widthMm + heightMm;
  const from = away(foot, side + Math.PI / 2 + hand.wobble(0.1), long);
  const to = away(foot, side - Math.PI / 2 + hand.wobble(0.1), long);
  // The line's ends are brought to the outline first, so that its teeth are spread over the break alone.
  // Every other point will do: knots stand at even places.
  const coarse = curve.points.filter((_, index) => index % 2 === 0);
  const ends = crossings(coarse, from, to);
  if (ends === null) return curve;
  const teeth = jagged(ends[0], ends[1], 7, Math.max(widthMm, heightMm) * 0.025, hand);
  const parted = split(coarse, teeth, true);
  const kept = area(parted.sides[0]) > area(parted.sides[1]) ? parted.sides[0] : parted.sides[1];
  const box = boxOf(kept);
  const points = kept.map(([x, y]): Point => [
    ((x - box.x) / box.width) * widthMm,
    ((y - box.y) / box.height) * heightMm,
  ]);
  return {
    path: linePath(points, true),
    points,
    mirrored: (width) =>
      linePath(
        points.map(([x, y]): Point => [width - x, y]),
        true,
      ),
  };
}

function crossings(points: readonly Point[], from: Point, to: Point): [Point, Point] | null {
  const found: Point[] = [];
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  let before = around(points, -1);
  for (const point of points) {
    const sideBefore = dx * (before[1] - from[1]) - dy * (before[0] - from[0]);
    const side = dx * (point[1] - from[1]) - dy * (point[0] - from[0]);
    if (sideBefore * side < 0) found.push(between(before, point, sideBefore / (sideBefore - side)));
    before = point;
  }
  return found.length < 2 ? null : [around(found, 0), around(found, 1)];
}
