import { openCurve } from '../curve.ts';
import type { Hand } from '../hand.ts';
import { outline, type Row } from '../outline.ts';
import { linePath } from '../path.ts';
import { hollowSection } from '../section.ts';
import type { Drawer, Sketch, Sketched } from '../sketch.ts';
import { stipple, strokes } from '../texture.ts';
import { faceOf } from './views.ts';

/** A long bone's knuckle and shaft; the lower end is broken in a slant, as bone split for marrow is. */
const shaft = (hand: Hand): readonly Row[] => [
  [-0.34, hand.within(0, 0.14), 'corner'],
  [hand.within(-0.2, -0.06), 0.13, 'corner'],
  [0.02, hand.within(0, 0.07), 'corner'],
  [0.14, hand.within(0.12, 0.2), 'corner'],
  [0.28, hand.within(0.05, 0.17), 'corner'],
  [0.26, 0.42],
  [0.27, 0.66],
  [0.48, 0.82],
  [0.5, 0.92],
  [0.34, 1],
  [0.1, 0.965],
  [-0.14, 0.99],
  [-0.42, 0.98],
  [-0.5, 0.86],
  [-0.32, 0.68],
  [-0.29, 0.4],
];

const SHOULDER: readonly Row[] = [
  [-0.1, 0, 'corner'],
  [0.1, 0, 'corner'],
  [0.14, 0.05],
  [0.08, 0.16],
  [0.24, 0.5],
  [0.5, 0.93, 'corner'],
  [0.2, 0.99],
  [-0.2, 1],
  [-0.5, 0.9, 'corner'],
  [-0.2, 0.45],
  [-0.08, 0.16],
  [-0.14, 0.05],
];

export const cattleBone: Drawer = (sketch) => {
  const { find } = sketch;
  return find.state === 'whole' && find.lengthMm >= 180 ? shoulderBlade(sketch) : longBone(sketch);
};

function longBone({ find, hand, isSmall }: Sketch): Sketched {
  const [width, height] = [find.widthMm, find.lengthMm];
  const curve = outline(shaft(hand), width, height, hand, 0.01);
  const spongy = stipple(curve.points, width * (isSmall ? 0.11 : 0.085), hand, ([x, y]) => {
    if (y / height < 0.16) return 0.6;
    return x / width > 0.62 && y / height < 0.8 ? 0.3 : 0;
  });
  const knuckle = openCurve([
    [width * 0.1, height * 0.2],
    [width * 0.4, height * 0.15],
    [width * 0.62, height * 0.16],
    [width * 0.9, height * 0.22],
  ]);
  const hollow = openCurve([
    [width * 0.21, height * 0.84],
    [width * 0.32, height * 0.77],
    [width * 0.47, height * 0.73],
    [width * 0.6, height * 0.76],
    [width * 0.75, height * 0.8],
  ]);
  const cuts = [0.42, 0.445, 0.48]
    .map((y) =>
      linePath([
        [width * 0.32, height * y],
        [width * 0.52, height * (y + 0.016)],
      ]),
    )
    .join('');
  return {
    face: faceOf(curve, width, height, [
      { ink: 'ridge', path: knuckle.path + hollow.path, part: 'break' },
      {
        ink: 'scratch',
        path: strokes(
          curve.points,
          isSmall ? 16 : 44,
          Math.PI / 2,
          height * 0.16,
          hand,
          ([, y]) => y > height * 0.24,
        ),
        part: 'grain',
      },
      { ink: 'retouch', path: cuts, part: 'cuts' },
      { ink: 'stipple', path: spongy, part: 'spongy' },
    ]),
    more: () => [hollowSection(width * 0.56, find.thicknessMm * 0.8, hand, find)],
    cutAtMm: height * 0.5,
  };
}

function shoulderBlade({ find, hand, isSmall }: Sketch): Sketched {
  const [width, height] = [find.widthMm, find.lengthMm];
  const curve = outline(SHOULDER, width, height, hand, 0.01);
  const spine = openCurve([
    [width * 0.52, height * 0.84],
    [width * 0.56, height * 0.6],
    [width * 0.66, height * 0.3],
    [width * 0.74, height * 0.08],
  ]);
  const lip = openCurve([
    [width * 0.57, height * 0.8],
    [width * 0.62, height * 0.58],
    [width * 0.72, height * 0.32],
    [width * 0.8, height * 0.1],
  ]);
  const socket = openCurve([
    [width * 0.4, height * 0.975],
    [width * 0.5, height * 0.955],
    [width * 0.6, height * 0.975],
  ]);
  const spongy = stipple(curve.points, width * (isSmall ? 0.09 : 0.07), hand, ([, y]) =>
    y / height < 0.08 ? 0.5 : 0,
  );
  return {
    face: faceOf(curve, width, height, [
      { ink: 'ridge', path: spine.path + lip.path + socket.path, part: 'spine' },
      {
        ink: 'scratch',
        path: strokes(curve.points, isSmall ? 16 : 40, Math.PI * 0.47, height * 0.1, hand),
        part: 'grain',
      },
      { ink: 'stipple', path: spongy, part: 'spongy' },
    ]),
    more: () => [],
  };
}
