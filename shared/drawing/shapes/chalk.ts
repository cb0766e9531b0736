import { breakOff } from '../break-off.ts';
import type { Curve } from '../curve.ts';
import type { Mark } from '../mark.ts';
import { lump, outline, type Row } from '../outline.ts';
import { linePath } from '../path.ts';
import { away, type Point } from '../point.ts';
import { insideParts } from '../region.ts';
import { sectionView } from '../section.ts';
import type { Drawer, Sketch } from '../sketch.ts';
import { stipple, strokes } from '../texture.ts';
import { edgeOf, faceOf } from './views.ts';

const BLOCK: readonly Row[] = [
  [-0.4, 0.02],
  [0, 0],
  [0.4, 0.02],
  [0.48, 0.12],
  [0.5, 0.5],
  [0.47, 0.88],
  [0.38, 0.98],
  [0, 1],
  [-0.4, 0.97],
  [-0.49, 0.86],
  [-0.5, 0.5],
  [-0.48, 0.12],
];

/** A disc cut from chalk by hand: nearly round, tool marks, often scratched lines. */
export const chalkDisc: Drawer = (sketch) => {
  const { find, hand } = sketch;
  const [width, height] = [find.widthMm, find.lengthMm];
  const whole = lump(width, height, hand, 2.05, 0.02, 11);
  const curve = find.state === 'broken' ? breakOff(whole, width, height, 0.9, 0.2, hand) : whole;
  return {
    face: faceOf(curve, width, height, chalkMarks(curve, width, height, sketch)),
    more: () => [edgeOf(sketch, 3.4), sectionView('block', width, find.thicknessMm, hand, find)],
    cutAtMm: height * 0.5,
  };
};

export const chalkBlock: Drawer = (sketch) => {
  const { find, hand } = sketch;
  const [width, height] = [find.widthMm, find.lengthMm];
  const curve = outline(BLOCK, width, height, hand, 0.015);
  return {
    face: faceOf(curve, width, height, chalkMarks(curve, width, height, sketch)),
    more: () => [edgeOf(sketch, 4), sectionView('block', width, find.thicknessMm, hand, find)],
    cutAtMm: height * 0.5,
  };
};

function chalkMarks(curve: Curve, width: number, height: number, sketch: Sketch): Mark[] {
  const { find, hand, isSmall } = sketch;
  const size = Math.max(width, height);
  const bevel = curve.points
    .filter((_, index) => index % 2 === 0)
    .map(([x, y]): Point => [
      width * 0.49 + (x - width * 0.5) * 0.87,
      height * 0.49 + (y - height * 0.5) * 0.87,
    ]);
  const shaded = bevel.filter(([x, y]) => x / width + y / height > 1.02);
  const dust = stipple(
    curve.points,
    size * (isSmall ? 0.08 : 0.06),
    hand,
    ([x, y]) => 0.08 + Math.max(0, x / width + y / height - 1.25),
  );
  const marks: Mark[] = [
    {
      ink: 'retouch',
      path: strokes(curve.points, isSmall ? 10 : 26, 2.2, size * 0.09, hand),
      part: 'tool-marks',
    },
    { ink: 'stipple', path: dust },
  ];
  if (shaded.length > 2)
    marks.push({
      ink: find.objectType === 'chalk-block' ? 'ridge' : 'dash',
      path: linePath(ordered(shaded, width, height)),
      part: 'rim',
    });
  if (find.decoration !== 'plain')
    marks.push({ ink: 'line', path: lattice(bevel, width, height, sketch), part: 'scratches' });
  return marks;
}

const ordered = (points: readonly Point[], width: number, height: number): Point[] =>
  [...points].sort(
    (a, b) =>
      Math.atan2(a[1] - height / 2, a[0] - width / 2) - Math.atan2(b[1] - height / 2, b[0] - width / 2),
  );

/** Two sets of scratched lines that cross. */
function lattice(face: readonly Point[], width: number, height: number, { hand }: Sketch): string {
  const heart: Point = [width / 2, height / 2];
  const gap = Math.min(width, height) * 0.15;
  let path = '';
  for (const [angle, count] of [
    [0.5, 4],
    [-0.75, 3],
  ] as const) {
    for (let index = 0; index < count; index += 1) {
      const at = away(heart, angle + Math.PI / 2, (index - (count - 1) / 2) * gap + hand.wobble(gap * 0.15));
      const reach = width * hand.within(0.28, 0.4);
      const turn = angle + hand.wobble(0.07);
      for (const ends of insideParts(face, away(at, turn, -reach), away(at, turn, reach)))
        path += linePath(ends);
    }
  }
  return path;
}
