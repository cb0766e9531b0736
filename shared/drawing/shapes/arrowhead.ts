import { breakOff } from '../break-off.ts';
import { mirrored, outline, type Row } from '../outline.ts';
import { middle, split } from '../region.ts';
import { ripples, shadeAt } from '../scar.ts';
import { sectionView } from '../section.ts';
import type { Drawer, Sketch, Sketched } from '../sketch.ts';
import { facets } from './biface.ts';
import { sideView, retouch } from './struck.ts';
import type { Curve } from '../curve.ts';
import type { Point } from '../point.ts';
import type { Mark } from '../mark.ts';
import { faceOf } from './views.ts';

const LEAF = mirrored([
  [0, 0],
  [0.3, 0.1],
  [0.5, 0.36],
  [0.34, 0.68],
  [0, 1, 'corner'],
]);

const OBLIQUE: readonly Row[] = [
  [-0.12, 0, 'corner'],
  [0.08, 0.02, 'corner'],
  [0.5, 0.22, 'corner'],
  [0.3, 0.62],
  [-0.42, 1, 'corner'],
  [-0.44, 0.7],
  [-0.3, 0.32],
];

const TRANSVERSE: readonly Row[] = [
  [-0.16, 0, 'corner'],
  [0.16, 0, 'corner'],
  [0.3, 0.4],
  [0.5, 0.96, 'corner'],
  [0, 1],
  [-0.5, 0.94, 'corner'],
  [-0.3, 0.4],
];

export const leafArrowhead: Drawer = (sketch) => {
  const { find, hand, isSmall } = sketch;
  const curve = outline(LEAF, find.widthMm, find.lengthMm, hand, 0.008);
  const marks = facets(curve, find.widthMm, find.lengthMm, hand, {
    count: isSmall ? 5 : 7,
    ripples: isSmall ? 0 : 4,
    from: 0.06,
    to: 0.93,
    lean: 0.35,
  });
  return head(sketch, curve, marks);
};

export const obliqueArrowhead: Drawer = (sketch) =>
  trimmed(sketch, OBLIQUE, (x, y) => x < -0.06 || (y > 0.8 && x < 0.45));
export const transverseArrowhead: Drawer = (sketch) =>
  trimmed(sketch, TRANSVERSE, (x, y) => Math.abs(x) > 0.1 && y > 0.1);

/** A head whose sides are trimmed by steep small chips and whose sharp edge is left alone. */
function trimmed(
  sketch: Sketch,
  rows: readonly Row[],
  isTrimmed: (x: number, y: number) => boolean,
): Sketched {
  const { find, hand, isSmall } = sketch;
  const [width, height] = [find.widthMm, find.lengthMm];
  const whole = outline(rows, width, height, hand, 0.01);
  const curve = find.state === 'broken' ? breakOff(whole, width, height, -Math.PI / 2, 0.14, hand) : whole;
  const heart: Point = [width * 0.5, height * 0.55];
  const runs: Point[][] = [[]];
  for (const point of curve.points) {
    if (isTrimmed(point[0] / width - 0.5, point[1] / height)) runs.at(-1)?.push(point);
    else if ((runs.at(-1)?.length ?? 0) > 0) runs.push([]);
  }
  const pitch = height * (isSmall ? 0.11 : 0.075);
  const chips = runs.filter((run) => run.length > 2).flatMap((run) => retouch(run, heart, 0.34, pitch, hand));
  const parted = split(curve.points, [
    [width * 0.2, 0],
    [width * 0.42, height * 0.45],
    [width * 0.5, height],
  ]);
  // Its ripples are those of the flake it was made from, struck from below.
  const old = parted.sides.flatMap((side) =>
    ripples(
      side,
      [width * 0.4, height * 1.15],
      isSmall ? 0 : 7,
      shadeAt(middle(side), width, height),
      hand,
      height * 0.006,
    ),
  );
  return head(sketch, curve, [{ ink: 'ridge', path: parted.path, part: 'ridge' }, ...old, ...chips]);
}

function head({ find, hand }: Sketch, curve: Curve, marks: readonly Mark[]): Sketched {
  const [width, height] = [find.widthMm, find.lengthMm];
  return {
    face: faceOf(curve, width, height, [...marks]),
    more: () => [
      sideView(
        find.thicknessMm,
        height,
        hand,
        mirrored([
          [0, 0],
          [0.42, 0.2],
          [0.5, 0.45],
          [0.3, 0.8],
          [0, 1, 'corner'],
        ]),
      ),
      sectionView('lens', width, find.thicknessMm, hand, find),
    ],
    cutAtMm: height * 0.5,
  };
}
