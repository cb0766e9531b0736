import { openCurve } from '../curve.ts';
import type { Mark } from '../mark.ts';
import { mirrored, outline, type Row } from '../outline.ts';
import { linePath } from '../path.ts';
import type { Point } from '../point.ts';
import { sectionView } from '../section.ts';
import type { Drawer, Sketch, Sketched } from '../sketch.ts';
import { stipple, strokes } from '../texture.ts';
import { sideView } from './struck.ts';

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
    face: {
      part: 'face',
      widthMm: width,
      heightMm: height,
      marks: [
        { ink: 'outline', path: curve.path, part: 'outline' },
        { ink: 'retouch', path: neck, part: 'head' },
        { ink: 'line', path: snap, part: 'break' },
        {
          ink: 'scratch',
          path: strokes(curve.points, isSmall ? 10 : 30, Math.PI / 2, height * 0.12, hand),
          part: 'polish',
        },
      ],
    },
    more: () => [sectionView('oval', width, find.thicknessMm, hand)],
    cutAtMm: height * 0.5,
  };
};

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
  [-0.345, 0.47, 'corner'],
  [-0.4, 0.7],
  [-0.47, 0.76, 'corner'],
];

export const pigJaw: Drawer = ({ find, hand, isSmall }) => {
  // A jaw lies along the page: its length runs across.
  const [width, height] = [find.lengthMm, find.widthMm];
  const turn = (x: number): number => (find.side === 'right' ? width - x : x);
  const rows =
    find.side === 'right'
      ? JAW.map(([x, y, corner]): Row => (corner === undefined ? [-x, y] : [-x, y, corner]))
      : JAW;
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
    face: {
      part: 'face',
      widthMm: width,
      heightMm: height,
      marks: [
        { ink: 'outline', path: curve.path, part: 'outline' },
        { ink: 'ridge', path: gum.path, part: 'teeth' },
        { ink: 'retouch', path: roots + branch.path + muscle.path + holes.join(''), part: 'bone' },
        { ink: 'stipple', path: body },
      ],
    },
    more: () => [sectionView('oval', find.thicknessMm, height * 0.6, hand)],
  };
};

const SHAFT: readonly Row[] = [
  [-0.34, 0, 'corner'],
  [-0.1, 0.1, 'corner'],
  [0.02, 0.03, 'corner'],
  [0.2, 0.16, 'corner'],
  [0.28, 0.11, 'corner'],
  [0.26, 0.4],
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
  const curve = outline(SHAFT, width, height, hand, 0.01);
  const spongy = stipple(curve.points, width * (isSmall ? 0.11 : 0.085), hand, ([, y]) =>
    y / height < 0.16 ? 0.6 : 0,
  );
  const knuckle = openCurve([
    [width * 0.1, height * 0.2],
    [width * 0.4, height * 0.15],
    [width * 0.62, height * 0.16],
    [width * 0.9, height * 0.22],
  ]);
  const hollow = openCurve([
    [width * 0.18, height * 0.97],
    [width * 0.3, height * 0.8],
    [width * 0.48, height * 0.74],
    [width * 0.6, height * 0.8],
    [width * 0.76, height * 0.86],
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
    face: {
      part: 'face',
      widthMm: width,
      heightMm: height,
      marks: [
        { ink: 'outline', path: curve.path, part: 'outline' },
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
      ],
    },
    more: () => [
      sideView(find.thicknessMm, height, hand),
      sectionView('oval', width * 0.58, find.thicknessMm * 0.8, hand),
    ],
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
    face: {
      part: 'face',
      widthMm: width,
      heightMm: height,
      marks: [
        { ink: 'outline', path: curve.path, part: 'outline' },
        { ink: 'ridge', path: spine.path + lip.path + socket.path, part: 'spine' },
        {
          ink: 'scratch',
          path: strokes(curve.points, isSmall ? 16 : 40, Math.PI * 0.47, height * 0.1, hand),
          part: 'grain',
        },
        { ink: 'stipple', path: spongy, part: 'spongy' },
      ],
    },
    more: () => [sideView(find.thicknessMm, height, hand)],
  };
}

// Foot: the burr; one tine kept beside it; the beam rises as the handle and ends in a cut.
const PICK: readonly Row[] = [
  [-0.42, 0.0],
  [-0.5, 0.02, 'corner'],
  [-0.47, 0.045, 'corner'],
  [-0.38, 0.06],
  [-0.3, 0.2],
  [-0.24, 0.42],
  [-0.18, 0.66],
  [-0.1, 0.9],
  [-0.06, 0.99, 'corner'],
  [0.22, 1, 'corner'],
  [0.22, 0.86],
  [0.14, 0.62],
  [0.1, 0.4],
  [0.12, 0.22],
  [0.2, 0.155],
  [0.32, 0.2],
  [0.42, 0.315],
  [0.47, 0.33],
  [0.5, 0.31],
  [0.47, 0.2],
  [0.38, 0.1],
  [0.24, 0.055],
  [0.1, 0.05],
  [0.14, 0.045, 'corner'],
  [0.16, 0.02, 'corner'],
  [0.08, 0.0],
  [-0.16, -0.005],
];

export const antlerPick: Drawer = ({ find, hand, isSmall }) => {
  const [width, height] = [find.widthMm, find.lengthMm];
  const curve = outline(PICK, width, height, hand, 0.003);
  const burr: Mark[] = [
    {
      ink: 'line',
      path: linePath([
        [width * 0.03, height * 0.957],
        [width * 0.63, height * 0.957],
      ]),
      part: 'burr',
    },
  ];
  const beads = stipple(
    [
      [0, height * 0.96],
      [width * 0.66, height * 0.96],
      [width * 0.66, height],
      [0, height],
    ],
    width * 0.07,
    hand,
    () => 0.9,
  );
  const end = openCurve([
    [width * 0.45, height * 0.012],
    [width * 0.58, height * 0.022],
    [width * 0.71, height * 0.002],
  ]);
  return {
    face: {
      part: 'face',
      widthMm: width,
      heightMm: height,
      marks: [
        { ink: 'outline', path: curve.path, part: 'outline' },
        ...burr,
        { ink: 'stipple', path: beads, part: 'burr' },
        { ink: 'ridge', path: end.path, part: 'cut' },
        {
          ink: 'scratch',
          path: strokes(
            curve.points,
            isSmall ? 40 : 110,
            Math.PI * 0.46,
            height * 0.05,
            hand,
            ([, y]) => y < height * 0.93,
          ),
          part: 'pearling',
        },
      ],
    },
    more: () => [sectionView('oval', find.thicknessMm, find.thicknessMm * 0.94, hand)],
    cutAtMm: height * 0.5,
  };
};
