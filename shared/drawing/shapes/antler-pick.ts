import { openCurve } from '../curve.ts';
import { outline, type Row } from '../outline.ts';
import { linePath } from '../path.ts';
import { sectionView } from '../section.ts';
import type { Drawer } from '../sketch.ts';
import { stipple, strokes } from '../texture.ts';
import { faceOf } from './views.ts';

// Foot: the burr; above it one tine is kept, worn blunt; the beam rises as the handle and ends in a cut.
const PICK: readonly Row[] = [
  [-0.16, -0.004],
  [-0.44, 0.003],
  [-0.5, 0.022, 'corner'],
  [-0.47, 0.044, 'corner'],
  [-0.41, 0.08],
  [-0.42, 0.2],
  [-0.42, 0.4],
  [-0.37, 0.62],
  [-0.26, 0.85],
  [-0.17, 0.985, 'corner'],
  [0.16, 1, 'corner'],
  [0.12, 0.9],
  [0.08, 0.8],
  [0.07, 0.755],
  [0.19, 0.748, 'corner'],
  [0.19, 0.705, 'corner'],
  [0.04, 0.69],
  [0.01, 0.6],
  [-0.02, 0.42],
  [0.01, 0.28],
  [0.08, 0.215],
  [0.17, 0.23],
  [0.27, 0.3],
  [0.34, 0.35],
  [0.43, 0.365],
  [0.5, 0.34],
  [0.47, 0.255],
  [0.38, 0.16],
  [0.24, 0.098],
  [0.13, 0.078],
  [0.13, 0.044, 'corner'],
  [0.2, 0.02, 'corner'],
  [0.1, 0.0],
];

/** A beam of red deer antler used as a pick: the burr at the foot, one tine left, the rest cut off. */
export const antlerPick: Drawer = ({ find, hand, isSmall }) => {
  const [width, height] = [find.widthMm, find.lengthMm];
  const curve = outline(PICK, width, height, hand, 0.003);
  const beads = stipple(
    [
      [0, height * 0.958],
      [width * 0.66, height * 0.958],
      [width * 0.66, height],
      [0, height],
    ],
    width * 0.075,
    hand,
    () => 0.9,
  );
  const end = openCurve([
    [width * 0.33, height * 0.014],
    [width * 0.5, height * 0.028],
    [width * 0.66, height * 0.002],
  ]);
  const stub = openCurve([
    [width * 0.69, height * 0.252],
    [width * 0.63, height * 0.272],
    [width * 0.69, height * 0.295],
  ]);
  const worn = openCurve([
    [width * 0.84, height * 0.655],
    [width * 0.9, height * 0.68],
    [width * 0.985, height * 0.68],
  ]);
  const shade = stipple(
    curve.points,
    Math.max(width * (isSmall ? 0.12 : 0.085), height * 0.02),
    hand,
    ([x, y]) =>
      y / height < 0.9 && x / width > 0.34 + (1 - y / height) * 0.12 && x < width * 0.66 ? 0.5 : 0,
  );
  return {
    face: faceOf(curve, width, height, [
      {
        ink: 'line',
        path: linePath([
          [width * 0.04, height * 0.956],
          [width * 0.62, height * 0.956],
        ]),
        part: 'burr',
      },
      { ink: 'stipple', path: beads, part: 'burr' },
      { ink: 'ridge', path: end.path + stub.path, part: 'cut' },
      { ink: 'ridge', path: worn.path, part: 'worn-point' },
      {
        ink: 'scratch',
        path: strokes(
          curve.points,
          isSmall ? 30 : 66,
          Math.PI * 0.47,
          height * 0.06,
          hand,
          ([, y]) => y < height * 0.93,
        ),
        part: 'pearling',
      },
      { ink: 'stipple', path: shade },
    ]),
    more: () => [sectionView('oval', find.thicknessMm, find.thicknessMm * 0.94, hand, find)],
    cutAtMm: height * 0.5,
  };
};
