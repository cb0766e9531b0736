import { openCurve } from '../curve.ts';
import { lump } from '../outline.ts';
import type { Point } from '../point.ts';
import { sectionView } from '../section.ts';
import type { Drawer } from '../sketch.ts';
import { faceOf } from './views.ts';

/** A stone nobody touched: its outline, and two light arcs on the side away from the light. */
export const naturalPebble: Drawer = (sketch) => {
  const { find, hand } = sketch;
  const [width, height] = [find.widthMm, find.lengthMm];
  const curve = lump(width, height, hand, 2.1, 0.035, 9);
  const arc = (part: number, from: number, to: number): string => {
    const points: Point[] = [];
    for (let step = 0; step <= 5; step += 1) {
      const angle = from + ((to - from) * step) / 5;
      points.push([(width / 2) * (1 + Math.cos(angle) * part), (height / 2) * (1 + Math.sin(angle) * part)]);
    }
    return openCurve(points).path;
  };
  return {
    face: faceOf(curve, width, height, [{ ink: 'scratch', path: arc(0.86, 0, 1.55) + arc(0.72, 0.35, 1.2) }]),
    more: () => [sectionView('oval', width, find.thicknessMm, hand, find)],
    cutAtMm: height * 0.5,
  };
};
