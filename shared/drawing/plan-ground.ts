import { closedCurve } from './curve.ts';
import type { PitToDraw } from './drawing.ts';
import type { Hand } from './hand.ts';
import type { Mark } from './mark.ts';
import { lump, type Shift } from './outline.ts';
import { linePath, wedgePath } from './path.ts';
import { apart, around, away, between, type Point } from './point.ts';
import { touch } from './plan-layout.ts';

/** How far in from the edge the slope ends, as a part of the way to the middle. */
export const slopePart = (pit: PitToDraw): number => (pit.profile === 'bowl' ? 0.3 : 0.19);

/** Space kept round the pit, mm. */
export const PLAN_MARGIN_MM = 26;
/** Space under the pit for the scale, mm. */
export const PLAN_FOOT_MM = 70;

/**
 * The ground of a plan: cut edge, hachures with their heads at the top of the slope, and the foot of the
 * slope dashed. Convention: Museum of London Archaeological Site Manual, 1994 (from memory).
 */
export function ground(pit: PitToDraw, hand: Hand): Mark[] {
  const put: Shift = ([x, y]) => [x + PLAN_MARGIN_MM, y + PLAN_MARGIN_MM];
  const edge = lump(pit.lengthMm, pit.widthMm, hand, 2.15, 0.022, 14, put);
  const heart: Point = put([pit.lengthMm / 2, pit.widthMm / 2]);
  const part = slopePart(pit);
  const marks: Mark[] = [{ ink: 'outline', path: edge.path, part: 'edge' }];
  marks.push({ ink: 'fill', path: hachures(edge.points, heart, part, hand), part: 'hachures' });
  const foot = edge.points
    .filter((_, index) => index % 8 === 0)
    .map((point) => ({ at: between(point, heart, part + hand.wobble(0.016)), corner: false }));
  marks.push({ ink: 'dash', path: closedCurve(foot).path, part: 'base' });
  return marks;
}

/** Wedges evenly round the edge, long and short in turn. */
function hachures(edge: readonly Point[], heart: Point, part: number, hand: Hand): string {
  const steps = edge.map((point, index) => apart(point, around(edge, index + 1)));
  const round = steps.reduce((sum, step) => sum + step, 0);
  // About 33 mm apart: at a scale of 1:20, 1.6 mm on paper.
  const gap = round / (2 * Math.round(round / 66));
  let path = '';
  let [next, walked, count] = [gap / 2, 0, 0];
  for (const [index, step] of steps.entries()) {
    for (; next < walked + step; next += gap) {
      const head = between(around(edge, index), around(edge, index + 1), (next - walked) / step);
      const long = count % 2 === 0 ? 0.86 : 0.5;
      path += wedgePath(
        between(head, heart, 0.012),
        between(head, heart, part * (long + hand.wobble(0.07))),
        10,
      );
      count += 1;
    }
    walked += step;
  }
  return path;
}

/** Stones and charcoal flecks on the floor, kept clear of what lies there. */
export function litter(pit: PitToDraw, taken: readonly (readonly Point[])[], hand: Hand): Mark[] {
  const heart: Point = [PLAN_MARGIN_MM + pit.lengthMm / 2, PLAN_MARGIN_MM + pit.widthMm / 2];
  const reach = 0.94 - slopePart(pit);
  const spot = (): Point => {
    const turn = hand.within(0, Math.PI * 2);
    const far = Math.sqrt(hand.within(0, 1)) * reach;
    return [
      heart[0] + (Math.cos(turn) * far * pit.lengthMm) / 2,
      heart[1] + (Math.sin(turn) * far * pit.widthMm) / 2,
    ];
  };
  const isFree = (at: Point, size: number): boolean => {
    const box: Point[] = [
      [at[0] - size, at[1] - size],
      [at[0] + size, at[1] - size],
      [at[0] + size, at[1] + size],
      [at[0] - size, at[1] + size],
    ];
    return !taken.some((area) => touch(area, box));
  };
  const marks: Mark[] = [];
  for (let count = 0; count < 26; count += 1) {
    const size = hand.within(9, 24);
    const at = spot();
    if (!isFree(at, size * 0.7)) continue;
    const stone = lump(size, size * hand.within(0.65, 0.95), hand, 2.3, 0.06, 7, ([x, y]) => [
      x + at[0],
      y + at[1],
    ]);
    marks.push({ ink: 'stone', path: stone.path, part: 'stones' });
  }
  let flecks = '';
  for (let count = 0; count < 70; count += 1) {
    const at = spot();
    const size = hand.within(2, 5.5);
    if (!isFree(at, size)) continue;
    const turn = hand.within(0, 6);
    flecks += linePath(
      [away(at, turn, size), away(at, turn + 1.7, size * 0.6), away(at, turn + 3.6, size * 0.8)],
      true,
    );
  }
  marks.push({ ink: 'fill', path: flecks, part: 'charcoal' });
  return marks;
}
