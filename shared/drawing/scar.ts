import type { Hand } from './hand.ts';
import type { Mark } from './mark.ts';
import { swellPath } from './path.ts';
import { apart, around, away, between, type Point } from './point.ts';
import { isInside, middle, type Region } from './region.ts';

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
  let [near, far] = [Infinity, 0];
  for (const point of region) {
    const reach = apart(point, blow);
    near = Math.min(near, reach);
    far = Math.max(far, reach);
  }
  const marks: Mark[] = [];
  for (let index = 1; index <= count; index += 1) {
    const part = (index / (count + 1)) ** 1.25 + hand.wobble(0.2 / (count + 1));
    const radius = near + (far - near) * part;
    const run = longestRun(region, blow, radius, facing);
    if (run === null) continue;
    const path = arcFrom(blow, radius, run, shade, hand, swellMm);
    if (path !== '') marks.push({ ink: 'ripple', path });
  }
  return marks;
}

/** The longest part of an arc that lies inside, as two angles. */
function longestRun(region: Region, blow: Point, radius: number, facing: number): [number, number] | null {
  const turns: number[] = [];
  let before = around(region, -1);
  let reachBefore = apart(before, blow);
  for (const point of region) {
    const reach = apart(point, blow);
    if (reach > radius !== reachBefore > radius) {
      const [x, y] = between(before, point, (radius - reachBefore) / (reach - reachBefore));
      const turned = Math.atan2(y - blow[1], x - blow[0]) - facing;
      turns.push(Math.atan2(Math.sin(turned), Math.cos(turned)));
    }
    [before, reachBefore] = [point, reach];
  }
  turns.sort((a, b) => a - b);
  let best: [number, number] | null = null;
  for (let index = 0; index + 1 < turns.length; index += 1) {
    const [start, end] = [facing + around(turns, index), facing + around(turns, index + 1)];
    if (best !== null && end - start <= best[1] - best[0]) continue;
    if (isInside(region, away(blow, (start + end) / 2, radius))) best = [start, end];
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
  // One bow cannot follow much more than a third of a circle.
  const span = Math.max(-2.2, Math.min(2.2, (light - dark) * keep));
  const to = dark + span;
  if (Math.abs(to - from) * radius < 1.5 * swellMm) return '';
  const half = (to - from) / 2;
  const [tip, tail] = [away(blow, from, radius), away(blow, to, radius)];
  // A pen bows a short ripple more than the circle does, so that its hollow side can be told.
  const bow = Math.max(radius / Math.cos(half) - radius * Math.cos(half), apart(tip, tail) * 0.26);
  const handle = away(blow, from + half, radius * Math.cos(half) + bow);
  return swellPath(tip, handle, tail, swellMm);
}

/** How far a scar is turned from the light, 0 to 1, by where it lies on a surface that bulges toward us. */
export function shadeAt(place: Point, widthMm: number, heightMm: number): number {
  const across = (place[0] / widthMm) * 2 - 1;
  const down = (place[1] / heightMm) * 2 - 1;
  return Math.max(0, Math.min(1, 0.5 + across * 0.62 + down * 0.22));
}
