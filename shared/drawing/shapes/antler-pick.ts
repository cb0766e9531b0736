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
  [-0.42, 0.003],
  [-0.5, 0.022, 'corner'],
  [-0.45, 0.044, 'corner'],
  [-0.37, 0.07],
  [-0.33, 0.2],
  [-0.31, 0.4],
  [-0.25, 0.62],
  [-0.12, 0.85],
  [-0.02, 0.985, 'corner'],
  [0.24, 1, 'corner'],
  [0.2, 0.86],
  [0.09, 0.62],
  [0.03, 0.42],
  [0.05, 0.26],
  [0.13, 0.2],
  [0.24, 0.225],
  [0.34, 0.3],
  [0.39, 0.345],
  [0.46, 0.355],
  [0.5, 0.335],
  [0.47, 0.26],
  [0.37, 0.16],
  [0.22, 0.095],
  [0.1, 0.075],
  [0.1, 0.044, 'corner'],
  [0.16, 0.02, 'corner'],
  [0.06, 0.0],
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
    [width * 0.48, height * 0.014],
    [width * 0.62, height * 0.026],
    [width * 0.74, height * 0.002],
  ]);
  const worn = openCurve([
    [width * 0.87, height * 0.66],
    [width * 0.92, height * 0.685],
    [width * 0.985, height * 0.685],
  ]);
  const shade = stipple(curve.points, width * (isSmall ? 0.12 : 0.085), hand, ([x, y]) =>
    y / height < 0.9 && x / width > 0.36 + (1 - y / height) * 0.2 && x < width * 0.66 ? 0.5 : 0,
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
      { ink: 'ridge', path: end.path, part: 'cut' },
      { ink: 'ridge', path: worn.path, part: 'worn-point' },
      {
        ink: 'scratch',
        path: strokes(
          curve.points,
          isSmall ? 30 : 100,
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
