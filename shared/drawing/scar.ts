import type { Hand } from './hand.ts';
import type { Mark } from './mark.ts';
import { swellPath } from './path.ts';
import { apart, away, type Point } from './point.ts';
import { isInside, middle, type Region } from './region.ts';

/** Angles tried along a ripple. */
const STEPS = 20;

/**
 * The ripples of one scar: arcs round the point of the blow, closer together near it, and drawn from the side
 * away from a light at the upper left. `shade` 0 is a scar in full light, 1 one turned away from it.
 *
 * Convention: Martingell & Saville 1988, Inizan et al. 1999 (from memory); light: Green, Illustrating Lithics.
 */
export function ripples(
  region: Region,
  blow: Point,
  count: number,
  shade: number,
  hand: Hand,
  swellMm: number,
): Mark[] {
  const heart = middle(region);
  const facing = Math.atan2(heart[1] - blow[1], heart[0] - blow[0]);
  let [near, far, low, high] = [Infinity, 0, 0, 0];
  for (const point of region) {
    const reach = apart(point, blow);
    near = Math.min(near, reach);
    far = Math.max(far, reach);
    if (reach < 0.01) continue;
    const turned = Math.atan2(point[1] - blow[1], point[0] - blow[0]) - facing;
    const turn = Math.atan2(Math.sin(turned), Math.cos(turned));
    low = Math.min(low, turn);
    high = Math.max(high, turn);
  }
  const marks: Mark[] = [];
  for (let index = 1; index <= count; index += 1) {
    const part = (index / (count + 1)) ** 1.25 + hand.wobble(0.2 / (count + 1));
    const radius = near + (far - near) * part;
    const run = longestRun(region, blow, radius, facing + low, facing + high);
    if (run === null) continue;
    const path = arcFrom(blow, radius, run, shade, hand, swellMm);
    if (path !== '') marks.push({ ink: 'ripple', path });
  }
  return marks;
}

/** The longest part of an arc that lies inside, as two angles. */
function longestRun(
  region: Region,
  blow: Point,
  radius: number,
  low: number,
  high: number,
): [number, number] | null {
  let best: [number, number] | null = null;
  let start: number | null = null;
  const step = (high - low) / STEPS;
  for (let count = 0; count <= STEPS; count += 1) {
    const angle = low + (count + 0.5) * step;
    const isIn = count < STEPS && isInside(region, away(blow, angle, radius));
    if (isIn && start === null) start = angle - step / 2;
    if (!isIn && start !== null) {
      const end = angle - step / 2;
      if (best === null || end - start > best[1] - best[0]) best = [start, end];
      start = null;
    }
  }
  return best;
}

function arcFrom(
  blow: Point,
  radius: number,
  [start, end]: readonly [number, number],
  shade: number,
  hand: Hand,
  swellMm: number,
): string {
  const first = away(blow, start, radius);
  const last = away(blow, end, radius);
  const isLastDark = last[0] + last[1] > first[0] + first[1];
  const [dark, light] = isLastDark ? [end, start] : [start, end];
  const keep = Math.min(0.94, 0.36 + 0.58 * shade + hand.wobble(0.14));
  const from = dark + (light - dark) * 0.04;
  const to = dark + (light - dark) * keep;
  if (Math.abs(to - from) * radius < 1.5 * swellMm) return '';
  const half = (to - from) / 2;
  const handle = away(blow, from + half, radius / Math.cos(half));
  return swellPath(away(blow, from, radius), handle, away(blow, to, radius), swellMm);
}

/** How far a scar is turned from the light, 0 to 1, by where it lies on a surface that bulges toward us. */
export function shadeAt(place: Point, widthMm: number, heightMm: number): number {
  const across = (place[0] / widthMm) * 2 - 1;
  const down = (place[1] / heightMm) * 2 - 1;
  return Math.max(0, Math.min(1, 0.5 + across * 0.62 + down * 0.22));
}
