import { derive, stream } from '../chance/index.ts';
import type { FindToDraw, PitPlan, PitToDraw, PlanPlace } from './drawing.ts';
import { handOf } from './hand.ts';
import { inked, markup, type Mark } from './mark.ts';
import { lump } from './outline.ts';
import { circlePath, dotPath, linePath, wedgePath } from './path.ts';
import { between, type Point } from './point.ts';

const MARGIN_MM = 90;

/**
 * A pit seen from above with its finds laid in it: none hides another, and each number stands clear.
 */
export function drawPitPlan(pit: PitToDraw, finds: readonly FindToDraw[]): PitPlan {
  const hand = handOf(derive(stream('drawing'), `plan-${pit.id}`));
  const [width, height] = [pit.lengthMm + 2 * MARGIN_MM, pit.widthMm + 2 * MARGIN_MM + 80];
  const heart: Point = [width / 2, MARGIN_MM + pit.widthMm / 2];
  const edge = lump(pit.lengthMm, pit.widthMm, hand, 2.15, 0.02, 14).points.map(([x, y]): Point => [
    x + MARGIN_MM,
    y + MARGIN_MM,
  ]);
  const marks: Mark[] = [{ ink: 'outline', path: linePath(edge, true), part: 'edge' }];
  const inner = pit.profile === 'bowl' ? 0.62 : 0.78;
  for (const [index, point] of edge.entries()) {
    const reach = index % 2 === 0 ? 0.9 : 0.55;
    marks.push({
      ink: 'fill',
      path: wedgePath(point, between(point, heart, (1 - inner) * reach), pit.lengthMm * 0.009),
      part: 'hachures',
    });
  }
  marks.push({
    ink: 'dash',
    path: linePath(
      edge.map((point) => between(heart, point, inner)),
      true,
    ),
    part: 'base',
  });
  for (let index = 0; index < 60; index += 1) {
    const at: Point = [heart[0] + hand.wobble(pit.lengthMm * 0.3), heart[1] + hand.wobble(pit.widthMm * 0.3)];
    marks.push({ ink: 'stipple', path: dotPath(at), part: 'charcoal' });
  }
  marks.push({
    ink: 'line',
    path: linePath([
      [width - 50, 110],
      [width - 50, 20],
      [width - 62, 44],
    ]),
    part: 'north',
  });
  marks.push({
    ink: 'bar',
    path: linePath([
      [MARGIN_MM, height - 60],
      [MARGIN_MM + 500, height - 60],
    ]),
    part: 'scale-bar',
  });
  const places: PlanPlace[] = finds.map((find, index) => {
    const turn = index * 2.39996;
    const reach = Math.sqrt((index + 0.5) / finds.length) * 0.62;
    const xMm = heart[0] + Math.cos(turn) * reach * pit.lengthMm * 0.5;
    const yMm = heart[1] + Math.sin(turn) * reach * pit.widthMm * 0.5;
    const size = Math.max(find.lengthMm, find.widthMm);
    return {
      id: find.id,
      xMm,
      yMm,
      turnDegrees: Math.round(hand.wobble(40)),
      enlarged: Math.max(1, 120 / size),
      tag: { xMm: xMm + 70, yMm: yMm - 60 },
    };
  });
  return {
    widthMm: width,
    heightMm: height,
    markup: inked(markup(marks) + (pit.id === '' ? circlePath(heart, 1) : '')),
    places,
  };
}
