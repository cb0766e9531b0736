import { outline, type Row } from '../outline.ts';
import { linePath } from '../path.ts';
import { sectionView } from '../section.ts';
import type { Drawer } from '../sketch.ts';
import { stipple } from '../texture.ts';
import { faceOf } from './views.ts';

const BRICK: readonly Row[] = [
  [-0.5, 0.1, 'corner'],
  [-0.1, 0, 'corner'],
  [0.14, 0.09, 'corner'],
  [0.36, 0.05, 'corner'],
  [0.5, 0.3, 'corner'],
  [0.49, 0.9, 'corner'],
  [0.34, 1, 'corner'],
  [-0.5, 0.98, 'corner'],
];

export const brickFragment: Drawer = ({ find, hand, isSmall }) => {
  const [width, height] = [find.widthMm, find.lengthMm];
  const curve = outline(BRICK, width, height, hand, 0.006);
  const arris =
    linePath([
      [0, height * 0.16],
      [width * 0.8, height * 0.18],
      [width * 0.99, height * 0.1],
    ]) +
    linePath([
      [width * 0.8, height * 0.18],
      [width * 0.8, height * 0.9],
    ]);
  const frog = linePath([
    [width * 0.08, height * 0.32],
    [width * 0.62, height * 0.34],
    [width * 0.62, height * 0.74],
  ]);
  const grit = stipple(curve.points, Math.max(width, height) * (isSmall ? 0.09 : 0.06), hand, ([x, y]) =>
    y < height * 0.15 ? 0 : x > width * 0.8 ? 0.85 : 0.3,
  );
  return {
    face: faceOf(curve, width, height, [
      { ink: 'line', path: arris, part: 'arris' },
      { ink: 'ridge', path: frog, part: 'frog' },
      { ink: 'stipple', path: grit },
    ]),
    more: () => [sectionView('block', width, find.thicknessMm, hand, find)],
    cutAtMm: height * 0.6,
  };
};
