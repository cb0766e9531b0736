import type { Curve } from '../curve.ts';
import { openCurve } from '../curve.ts';
import { bowPath } from '../path.ts';
import type { Hand } from '../hand.ts';
import type { Mark } from '../mark.ts';
import { around, between, type Point } from '../point.ts';
import { middle, type Region } from '../region.ts';
import { ripples, shadeAt } from '../scar.ts';

/** Where a curve's edge is at a height, on the left or the right, mm. */
export function edgeAt(points: readonly Point[], y: number, side: 'left' | 'right'): Point {
  let found: number | null = null;
  let before = around(points, -1);
  for (const point of points) {
    if ((point[1] - y) * (before[1] - y) <= 0 && point[1] !== before[1]) {
      const x = before[0] + ((point[0] - before[0]) * (y - before[1])) / (point[1] - before[1]);
      if (found === null || (side === 'left' ? x < found : x > found)) found = x;
    }
    before = point;
  }
  return [found ?? 0, y];
}

export interface Facets {
  /** Scars down each side. */
  readonly count: number;
  /** Ripples in a scar turned from the light. */
  readonly ripples: number;
  /** Heights between which scars run, as parts of the height. */
  readonly from: number;
  readonly to: number;
  /** How far the scars lean: 0 level, more slants toward the foot at the edge. */
  readonly lean: number;
}

/** Scars from both edges that meet along a wavering middle ridge. */
export function facets(curve: Curve, widthMm: number, heightMm: number, hand: Hand, set: Facets): Mark[] {
  const marks: Mark[] = [];
  const spine: Point[] = [];
  const steps = set.count * 2;
  for (let step = 0; step <= steps; step += 1) {
    const isTip = step === 0 || step === steps;
    const place = (step + (isTip ? 0 : hand.wobble(0.42))) / steps;
    const y = heightMm * (set.from + (set.to - set.from) * place);
    const [left, right] = [edgeAt(curve.points, y, 'left'), edgeAt(curve.points, y, 'right')];
    const sway = (step % 2 === 0 ? 0.035 : -0.03) + hand.wobble(0.05);
    spine.push(between(left, right, 0.5 + (isTip ? 0 : sway)));
  }
  marks.push({ ink: 'ridge', path: openCurve(spine).path, part: 'ridge' });
  for (const side of ['left', 'right'] as const)
    marks.push(...sideScars(curve, spine, side, widthMm, heightMm, hand, set));
  return marks;
}

function sideScars(
  curve: Curve,
  spine: readonly Point[],
  side: 'left' | 'right',
  widthMm: number,
  heightMm: number,
  hand: Hand,
  set: Facets,
): Mark[] {
  const lines: Mark[] = [];
  const arcs: Mark[] = [];
  const first = side === 'left' ? 0 : 1;
  let lastY = -Infinity;
  let above: readonly Point[] | null = null;
  for (let step = first; step < spine.length; step += 2) {
    const inner = around(spine, step);
    const pitch = heightMm * ((set.to - set.from) / set.count);
    const drop = pitch * (set.lean + hand.wobble(0.3));
    // Scars keep their order down the edge, however they lean.
    const lowest = Math.max(inner[1] + drop, lastY + pitch * 0.35);
    const outerY = Math.min(heightMm * 0.985, Math.max(heightMm * 0.015, lowest));
    lastY = outerY;
    const outer = edgeAt(curve.points, outerY, side);
    const bend = between(inner, outer, 0.5);
    const line: Point[] = [inner, [bend[0], bend[1] + pitch * (hand.wobble(0.16) - 0.08)], outer];
    const isEnd = step === 0 || step === spine.length - 1;
    if (!isEnd) lines.push({ ink: 'ridge', path: bowPath(inner, [around(line, 1), outer]), part: 'ridge' });
    if (above !== null && set.ripples > 0)
      arcs.push(...rippled([...above, ...[...line].reverse()], side, widthMm, heightMm, hand, set));
    above = line;
  }
  return [...lines, ...arcs];
}

function rippled(
  scar: Region,
  side: 'left' | 'right',
  widthMm: number,
  heightMm: number,
  hand: Hand,
  set: Facets,
): Mark[] {
  const outer = scar.reduce((far, point) =>
    (side === 'left' ? point[0] < far[0] : point[0] > far[0]) ? point : far,
  );
  const heart = middle(scar);
  const shade = shadeAt(heart, widthMm, heightMm);
  const blow: Point = between(heart, outer, 1.25);
  const count = Math.round(set.ripples * (0.35 + 0.65 * shade));
  return ripples(scar, blow, count, shade, hand, widthMm * 0.009);
}
