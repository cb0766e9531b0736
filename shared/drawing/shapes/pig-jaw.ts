import { openCurve } from '../curve.ts';
import { flipped, outline, type Row } from '../outline.ts';
import { linePath } from '../path.ts';
import type { Point } from '../point.ts';
import { sectionView } from '../section.ts';
import type { Drawer } from '../sketch.ts';
import { stipple } from '../texture.ts';
import { faceOf } from './views.ts';

// The left half of a lower jaw from its outer side, front to the left. Teeth are cut into the upper edge.
const JAW: readonly Row[] = [
  [-0.5, 0.5],
  [-0.46, 0.3],
  [-0.32, 0.1],
  [-0.1, 0.02],
  [0.12, 0.05],
  [0.28, 0],
  [0.42, 0.08],
  [0.46, 0.4],
  [0.42, 0.7],
  [0.5, 0.86],
  [0.44, 0.92, 'corner'],
  [0.39, 0.82],
  [0.35, 1, 'corner'],
  [0.29, 0.94],
  [0.24, 0.62],
  [0.2, 0.5, 'corner'],
  [0.19, 0.66],
  [0.155, 0.6],
  [0.12, 0.67],
  [0.085, 0.6],
  [0.05, 0.66],
  [0.04, 0.5, 'corner'],
  [0.03, 0.64],
  [-0.01, 0.58],
  [-0.05, 0.64],
  [-0.065, 0.5, 'corner'],
  [-0.08, 0.62],
  [-0.11, 0.57],
  [-0.14, 0.62],
  [-0.155, 0.49, 'corner'],
  [-0.18, 0.6],
  [-0.22, 0.49, 'corner'],
  [-0.25, 0.58],
  [-0.29, 0.48, 'corner'],
  [-0.325, 0.47, 'corner'],
  [-0.36, 0.72],
  [-0.44, 0.93, 'corner'],
  [-0.445, 0.7],
  [-0.42, 0.53, 'corner'],
  [-0.455, 0.62, 'corner'],
];

export const pigJaw: Drawer = ({ find, hand, isSmall }) => {
  // A jaw lies along the page: its length runs across.
  const [width, height] = [find.lengthMm, find.widthMm];
  const turn = (x: number): number => (find.side === 'right' ? width - x : x);
  const rows = find.side === 'right' ? flipped(JAW) : JAW;
  const curve = outline(rows, width, height, hand, 0.003);
  const at = (x: number, y: number): Point => [turn(x * width), (1 - y) * height];
  const gum = openCurve([at(0.13, 0.45), at(0.3, 0.455), at(0.5, 0.47), at(0.71, 0.48)]);
  const holes = [at(0.12, 0.3), at(0.17, 0.25)].map(
    ([x, y]) =>
      openCurve([
        [x - width * 0.008, y],
        [x, y - height * 0.018],
        [x + width * 0.008, y],
      ]).path,
  );
  const branch = openCurve([at(0.74, 0.5), at(0.79, 0.32), at(0.86, 0.22)]);
  const muscle = openCurve([at(0.84, 0.62), at(0.88, 0.45), at(0.87, 0.3)]);
  const roots = [0.22, 0.28, 0.345, 0.43, 0.545, 0.63]
    .map((x) => linePath([at(x, 0.46), at(x + 0.005, 0.52)]))
    .join('');
  const body = stipple(curve.points, height * (isSmall ? 0.1 : 0.075), hand, ([x, y]) =>
    y / height > 0.8 && x > 0 ? 0.5 : 0,
  );
  return {
    face: faceOf(curve, width, height, [
      { ink: 'ridge', path: gum.path, part: 'teeth' },
      { ink: 'retouch', path: roots + branch.path + muscle.path + holes.join(''), part: 'bone' },
      { ink: 'stipple', path: body },
    ]),
    more: () => [sectionView('oval', find.thicknessMm, height * 0.48, hand, find)],
  };
};
