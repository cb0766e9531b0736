import { boxOf } from './curve.ts';
import type { Hand } from './hand.ts';
import { dotPath, linePath } from './path.ts';
import { away, type Point } from './point.ts';
import { insideParts, isInside, type Region } from './region.ts';

/** Dots spread unevenly over a region; `density` gives the share kept at a place, 0 to 1. */
export function stipple(
  region: Region,
  gapMm: number,
  hand: Hand,
  density: (place: Point) => number,
): string {
  const box = boxOf(region);
  let path = '';
  for (let y = box.y + gapMm / 2; y < box.y + box.height; y += gapMm) {
    for (let x = box.x + gapMm / 2; x < box.x + box.width; x += gapMm) {
      const place: Point = [x + hand.wobble(gapMm * 0.42), y + hand.wobble(gapMm * 0.42)];
      if (hand.happens(density(place)) && isInside(region, place)) path += dotPath(place);
    }
  }
  return path;
}

/** Slanting lines over a cut surface, at 45 degrees. */
export function hatch(region: Region, gapMm: number): string {
  const box = boxOf(region);
  const reach = box.width + box.height;
  let path = '';
  for (let offset = gapMm; offset < reach; offset += gapMm) {
    const from: Point = [box.x + offset, box.y];
    const to: Point = [box.x + offset - reach, box.y + reach];
    for (const ends of insideParts(region, from, to)) path += linePath(ends);
  }
  return path;
}

/** Short strokes, nearly side by side, where both ends lie inside. */
export function strokes(
  region: Region,
  count: number,
  angle: number,
  lengthMm: number,
  hand: Hand,
  keeps: (place: Point) => boolean = () => true,
): string {
  const box = boxOf(region);
  let path = '';
  for (let index = 0; index < count; index += 1) {
    const from: Point = [box.x + hand.within(0, 1) * box.width, box.y + hand.within(0, 1) * box.height];
    const to = away(from, angle + hand.wobble(0.05), lengthMm * hand.within(0.4, 1));
    if (keeps(from) && isInside(region, from) && isInside(region, to)) path += linePath([from, to]);
  }
  return path;
}
