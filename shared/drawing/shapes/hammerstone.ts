import type { Curve } from '../curve.ts';
import type { Mark } from '../mark.ts';
import { lump } from '../outline.ts';
import { linePath } from '../path.ts';
import { away, type Point } from '../point.ts';
import { isInside } from '../region.ts';
import { sectionView } from '../section.ts';
import type { Drawer, Sketch } from '../sketch.ts';
import { stipple } from '../texture.ts';
import { faceOf } from './views.ts';

/** A rounded stone with battered patches at both ends, where it struck; elsewhere its own smooth skin. */
export const hammerstone: Drawer = (sketch) => {
  const { find, hand } = sketch;
  const [width, height] = [find.widthMm, find.lengthMm];
  const curve = lump(width, height, hand, 2.3, 0.02);
  return {
    face: faceOf(curve, width, height, pecked(curve, width, height, sketch)),
    more: () => [sectionView('oval', width, find.thicknessMm, hand, find)],
    cutAtMm: height * 0.5,
  };
};

function pecked(curve: Curve, width: number, height: number, { hand }: Sketch): Mark[] {
  const gap = Math.max(width, height) * 0.06;
  let pecks = '';
  for (let y = gap / 2; y < height; y += gap) {
    for (let x = gap / 2; x < width; x += gap) {
      const place: Point = [x + hand.wobble(gap * 0.4), y + hand.wobble(gap * 0.4)];
      const toEnd = Math.abs(place[1] / height - 0.5) - 0.3 + Math.abs(place[0] / width - 0.48) * 0.12;
      if (toEnd < 0 || hand.happens(0.25 - toEnd * 3) || !isInside(curve.points, place)) continue;
      const size = gap * hand.within(0.25, 0.5);
      const tilt = hand.wobble(0.6);
      const tips = [
        away(place, Math.PI * 1.25 + tilt, size),
        away(place, -Math.PI * 0.25 + tilt, size),
      ] as const;
      if (tips.every((tip) => isInside(curve.points, tip))) pecks += linePath([tips[0], place, tips[1]]);
    }
  }
  const shade = stipple(curve.points, gap * 1.4, hand, ([x, y]) =>
    Math.abs(y / height - 0.5) > 0.28 ? 0 : Math.max(0, (x / width - 0.58) * 2),
  );
  return [
    { ink: 'retouch', path: pecks, part: 'pecked' },
    { ink: 'stipple', path: shade },
  ];
}
