import { mirrored, outline } from '../outline.ts';
import { linePath } from '../path.ts';
import { sectionView } from '../section.ts';
import type { Drawer } from '../sketch.ts';
import { strokes } from '../texture.ts';
import { faceOf } from './views.ts';

const PIN = mirrored([
  [0, 0, 'corner'],
  [0.22, 0.12],
  [0.4, 0.35],
  [0.48, 0.65],
  [0.38, 0.9],
  [0.5, 0.955],
  [0.3, 0.995],
  [0, 1],
]);

export const bonePin: Drawer = ({ find, hand, isSmall }) => {
  const [width, height] = [find.widthMm, find.lengthMm];
  const curve = outline(PIN, width, height, hand, 0.006);
  const neck = linePath([
    [width * 0.14, height * 0.1],
    [width * 0.86, height * 0.1],
  ]);
  const snap =
    find.state === 'broken'
      ? linePath([
          [width * 0.06, height * 0.42],
          [width * 0.3, height * 0.45],
          [width * 0.6, height * 0.425],
          [width * 0.94, height * 0.455],
        ])
      : '';
  return {
    face: faceOf(curve, width, height, [
      { ink: 'retouch', path: neck, part: 'head' },
      { ink: 'line', path: snap, part: 'break' },
      {
        ink: 'scratch',
        path: strokes(curve.points, isSmall ? 10 : 30, Math.PI / 2, height * 0.12, hand),
        part: 'polish',
      },
    ]),
    more: () => [sectionView('oval', width, find.thicknessMm, hand, find)],
    cutAtMm: height * 0.5,
  };
};
