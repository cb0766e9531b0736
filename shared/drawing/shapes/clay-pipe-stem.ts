import { openCurve } from '../curve.ts';
import { outline, type Row } from '../outline.ts';
import { circlePath, linePath } from '../path.ts';
import type { Point } from '../point.ts';
import type { Drawer, View } from '../sketch.ts';
import { faceOf } from './views.ts';

export const clayPipeStem: Drawer = ({ find, hand }) => {
  const [width, height] = [find.widthMm, find.lengthMm];
  const rows: Row[] = [
    [-0.44, 0.03, 'corner'],
    [-0.1, 0, 'corner'],
    [0.14, 0.04, 'corner'],
    [0.46, 0.015, 'corner'],
    [0.5, 0.95, 'corner'],
    [0.3, 0.99],
    [0, 1],
    [-0.3, 0.99],
    [-0.5, 0.95, 'corner'],
  ];
  const curve = outline(rows, width, height, hand, 0.002);
  const lip = openCurve([
    [0, height * 0.05],
    [width * 0.25, height * 0.09],
    [width * 0.75, height * 0.09],
    [width, height * 0.05],
  ]);
  const seam = linePath([
    [width * 0.72, height * 0.14],
    [width * 0.7, height * 0.95],
  ]);
  return {
    face: faceOf(curve, width, height, [
      { ink: 'ridge', path: lip.path },
      {
        ink: 'fill',
        path: circlePath([width / 2, height * 0.045], width * 0.17, height * 0.018),
        part: 'bore',
      },
      { ink: 'scratch', path: seam, part: 'seam' },
    ]),
    more: () => [ring(width, find.thicknessMm)],
    cutAtMm: height * 0.5,
  };
};

function ring(width: number, thickness: number): View {
  const heart: Point = [width / 2, thickness / 2];
  return {
    part: 'section',
    widthMm: width,
    heightMm: thickness,
    marks: [
      { ink: 'outline', path: circlePath(heart, width / 2, thickness / 2) },
      { ink: 'fill', path: circlePath(heart, width * 0.14, thickness * 0.14), part: 'bore' },
    ],
  };
}
