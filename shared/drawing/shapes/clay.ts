import { openCurve } from '../curve.ts';
import type { Mark } from '../mark.ts';
import { outline, type Row } from '../outline.ts';
import { circlePath, linePath } from '../path.ts';
import type { Point } from '../point.ts';
import { insideParts } from '../region.ts';
import { cut, sectionView } from '../section.ts';
import type { Drawer, View } from '../sketch.ts';
import type { Hand } from '../hand.ts';
import { stipple } from '../texture.ts';

const SHERD: readonly Row[] = [
  [-0.42, 0.12, 'corner'],
  [-0.1, 0.03, 'corner'],
  [0.2, 0, 'corner'],
  [0.42, 0.2, 'corner'],
  [0.5, 0.56, 'corner'],
  [0.36, 0.94, 'corner'],
  [-0.06, 1, 'corner'],
  [-0.36, 0.92, 'corner'],
  [-0.5, 0.5, 'corner'],
];

export const groovedWareSherd: Drawer = ({ find, hand, isSmall }) => {
  const [width, height] = [find.widthMm, find.lengthMm];
  const curve = outline(SHERD, width, height, hand, 0.035);
  const across = (part: number, sag: number): string => {
    const y = height * part;
    return insideParts(curve.points, [-1, y - sag], [width + 1, y + sag])
      .map(
        ([from, to]) =>
          openCurve([from, [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2 + height * 0.015], to]).path,
      )
      .join('');
  };
  const slant = (from: number, to: number, count: number): string => {
    let path = '';
    for (let index = -1; index <= count; index += 1) {
      const x = (width * index) / count;
      const step = width / count;
      const zig: [Point, Point][] = [
        [
          [x, height * to],
          [x + step / 2, height * from],
        ],
        [
          [x + step / 2, height * from],
          [x + step, height * to],
        ],
      ];
      for (const [a, b] of zig) for (const part of insideParts(curve.points, a, b)) path += linePath(part);
    }
    return path;
  };
  const marks: Mark[] = [];
  const decoration = find.decoration ?? 'grooved';
  if (decoration === 'cordon') {
    marks.push(
      { ink: 'line', path: across(0.47, 0.6) + across(0.6, 0.6), part: 'cordon' },
      {
        ink: 'retouch',
        path: across(0.26, 0.6) + across(0.33, 0.6) + across(0.76, 0.6) + slant(0.8, 0.93, 5),
        part: 'grooves',
      },
    );
    marks.push({ ink: 'hatch', path: cordonShade(width, height, curve.points), part: 'cordon' });
  } else if (decoration !== 'plain') {
    marks.push({
      ink: 'ridge',
      path:
        [0.2, 0.28, 0.36].map((part) => across(part, 0.6)).join('') +
        slant(0.42, 0.64, 4) +
        [0.7, 0.78, 0.86].map((part) => across(part, 0.6)).join(''),
      part: 'grooves',
    });
  }
  const rough = stipple(
    curve.points,
    Math.max(width, height) * (isSmall ? 0.09 : 0.065),
    hand,
    ([x, y]) => (decoration === 'plain' ? 0.35 : 0.12) + (x / width + y / height > 1.5 ? 0.25 : 0),
  );
  marks.push({ ink: 'stipple', path: rough, part: 'fabric' });
  return {
    face: {
      part: 'face',
      widthMm: width,
      heightMm: height,
      marks: [{ ink: 'outline', path: curve.path, part: 'outline' }, ...marks],
    },
    more: () => [wall(find.thicknessMm, height, hand, decoration === 'cordon')],
    sectionStands: 'left',
  };
};

function cordonShade(width: number, height: number, region: readonly Point[]): string {
  let path = '';
  for (let x = width * 0.03; x < width; x += width / 14) {
    for (const part of insideParts(region, [x, height * 0.545], [x - width * 0.012, height * 0.6]))
      path += linePath(part);
  }
  return path;
}

/** The wall's section: outer face to the right. */
function wall(thickness: number, height: number, hand: Hand, hasCordon: boolean): View {
  const rows: Row[] = [
    [-0.4, 0, 'corner'],
    [0.3, 0.02, 'corner'],
    [0.32, 0.34],
    ...(hasCordon
      ? ([
          [0.34, 0.39],
          [0.5, 0.42],
          [0.5, 0.5],
          [0.36, 0.54],
        ] as const)
      : ([[0.42, 0.45]] as const)),
    [0.38, 0.7],
    [0.5, 0.98, 'corner'],
    [-0.25, 1, 'corner'],
    [-0.42, 0.6],
    [-0.5, 0.3],
  ];
  const curve = outline(rows, thickness, height, hand, 0.01);
  return { part: 'section', widthMm: thickness, heightMm: height, marks: cut(curve, thickness, height) };
}

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
    face: {
      part: 'face',
      widthMm: width,
      heightMm: height,
      marks: [
        { ink: 'outline', path: curve.path, part: 'outline' },
        { ink: 'line', path: arris, part: 'arris' },
        { ink: 'ridge', path: frog, part: 'frog' },
        { ink: 'stipple', path: grit },
      ],
    },
    more: () => [sectionView('block', width, find.thicknessMm, hand)],
    cutAtMm: height * 0.6,
  };
};

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
    face: {
      part: 'face',
      widthMm: width,
      heightMm: height,
      marks: [
        { ink: 'outline', path: curve.path, part: 'outline' },
        { ink: 'ridge', path: lip.path },
        {
          ink: 'fill',
          path: circlePath([width / 2, height * 0.045], width * 0.17, height * 0.018),
          part: 'bore',
        },
        { ink: 'scratch', path: seam, part: 'seam' },
      ],
    },
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
