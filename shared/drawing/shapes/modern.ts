import { openCurve } from '../curve.ts';
import { outline, type Row } from '../outline.ts';
import { circlePath, linePath } from '../path.ts';
import { sectionView } from '../section.ts';
import type { Drawer } from '../sketch.ts';
import { stipple } from '../texture.ts';
import { faceOf } from './views.ts';

const NAIL: readonly Row[] = [
  [0, 0, 'corner'],
  [0.16, 0.06, 'corner'],
  [0.18, 0.3],
  [0.24, 0.36],
  [0.19, 0.44],
  [0.2, 0.7],
  [0.25, 0.9, 'corner'],
  [0.5, 0.92, 'corner'],
  [0.48, 0.98, 'corner'],
  [0.2, 1],
  [-0.48, 0.99, 'corner'],
  [-0.5, 0.93, 'corner'],
  [-0.25, 0.9, 'corner'],
  [-0.18, 0.6],
  [-0.23, 0.52],
  [-0.17, 0.4],
  [-0.15, 0.06, 'corner'],
];

export const ironNail: Drawer = ({ find, hand }) => {
  const [width, height] = [find.widthMm, find.lengthMm];
  const curve = outline(NAIL, width, height, hand, 0.008);
  const rust = stipple(curve.points, width * 0.2, hand, () => 0.55);
  return {
    face: faceOf(curve, width, height, [
      {
        ink: 'line',
        path: linePath([
          [width * 0.26, height * 0.095],
          [width * 0.74, height * 0.095],
        ]),
        part: 'head',
      },
      { ink: 'stipple', path: rust, part: 'rust' },
    ]),
    more: () => [sectionView('block', width * 0.4, find.thicknessMm * 0.4, hand, find)],
    cutAtMm: height * 0.5,
  };
};

const GLASS: readonly Row[] = [
  [-0.44, 0, 'corner'],
  [0.1, 0.1],
  [0.5, 0.34, 'corner'],
  [0.2, 0.62],
  [0.06, 1, 'corner'],
  [-0.36, 0.78],
  [-0.5, 0.4],
];

export const bottleGlass: Drawer = ({ find, hand }) => {
  const [width, height] = [find.widthMm, find.lengthMm];
  const curve = outline(GLASS, width, height, hand, 0.01);
  const thick = openCurve([
    [width * 0.1, height * 0.92],
    [width * 0.58, height * 0.8],
    [width * 0.9, height * 0.6],
  ]);
  const other = openCurve([
    [width * 0.9, height * 0.6],
    [width * 0.62, height * 0.36],
    [width * 0.54, height * 0.08],
  ]);
  const shine =
    openCurve([
      [width * 0.2, height * 0.7],
      [width * 0.17, height * 0.5],
      [width * 0.26, height * 0.32],
    ]).path +
    openCurve([
      [width * 0.29, height * 0.66],
      [width * 0.27, height * 0.52],
      [width * 0.33, height * 0.4],
    ]).path;
  return {
    face: faceOf(curve, width, height, [
      { ink: 'ridge', path: thick.path + other.path, part: 'thickness' },
      { ink: 'line', path: shine, part: 'shine' },
    ]),
    more: () => [sectionView('block', width, find.thicknessMm, hand, find)],
    cutAtMm: height * 0.5,
  };
};

const TAG: readonly Row[] = [
  [-0.5, 0.08],
  [-0.44, 0, 'corner'],
  [0.44, 0, 'corner'],
  [0.5, 0.08],
  [0.5, 0.78, 'corner'],
  [0.24, 1, 'corner'],
  [-0.24, 1, 'corner'],
  [-0.5, 0.78, 'corner'],
];

export const plasticTag: Drawer = ({ find, hand }) => {
  const [width, height] = [find.widthMm, find.lengthMm];
  const curve = outline(TAG, width, height, hand, 0);
  const radius = Math.min(width, height) * 0.09;
  const print = [0.42, 0.56, 0.7, 0.84]
    .map((y) =>
      linePath([
        [width * 0.16, height * y],
        [width * (y > 0.8 ? 0.56 : 0.84), height * y],
      ]),
    )
    .join('');
  return {
    face: faceOf(curve, width, height, [
      { ink: 'open', path: circlePath([width / 2, height * 0.16], radius), part: 'hole' },
      { ink: 'retouch', path: print, part: 'print' },
    ]),
    more: () => [sectionView('block', width, find.thicknessMm, hand, find)],
    cutAtMm: height * 0.5,
  };
};
