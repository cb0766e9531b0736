import { openCurve, type Curve } from '../curve.ts';
import type { Hand } from '../hand.ts';
import type { Mark } from '../mark.ts';
import { mirrored, outline, type Row } from '../outline.ts';
import { linePath } from '../path.ts';
import type { Point } from '../point.ts';
import { sectionView } from '../section.ts';
import type { Drawer, Sketch } from '../sketch.ts';
import { stipple, strokes } from '../texture.ts';
import { edgeAt, facets } from './biface.ts';
import { jagged } from '../break-off.ts';
import { sideView, struckFace } from './struck.ts';
import { faceOf } from './views.ts';

const AXE: readonly Row[] = [
  [0, 0],
  [0.3, 0.025],
  [0.5, 0.09, 'corner'],
  [0.47, 0.45],
  [0.38, 0.8],
  [0.25, 0.965],
  [0, 1],
];
const STUMP: readonly Row[] = [
  [0, 0],
  [0.3, 0.03],
  [0.5, 0.12, 'corner'],
  [0.48, 0.5],
  [0.43, 0.93, 'corner'],
];
const ROUGH: readonly Row[] = [
  [0, 0],
  [0.24, 0.02],
  [0.45, 0.09],
  [0.48, 0.22],
  [0.5, 0.36],
  [0.45, 0.5],
  [0.44, 0.64],
  [0.37, 0.78],
  [0.31, 0.9],
  [0.17, 0.98],
  [0, 1],
];
const SIDE = mirrored([
  [0, 0, 'corner'],
  [0.3, 0.14],
  [0.5, 0.45],
  [0.42, 0.78],
  [0.2, 0.97],
  [0, 1],
]);

const STUMP_SIDE = mirrored([
  [0, 0, 'corner'],
  [0.3, 0.16],
  [0.48, 0.5],
  [0.5, 0.97, 'corner'],
  [0.14, 1, 'corner'],
]);

function brokenTop(rows: readonly Row[], hand: Hand): Row[] {
  const right = rows.filter(([, , corner], index) => corner !== 'corner' || index < rows.length - 1);
  const top = jagged([0.43, 0.93], [-0.43, 0.96], 7, 0.035, hand).map(([x, y]): Row => [x, y, 'corner']);
  const left = right
    .slice(1)
    .map(([x, y, corner]): Row => (corner === undefined ? [-x, y] : [-x, y, corner]))
    .reverse();
  return [...right, ...top, ...left];
}

export const polishedAxe: Drawer = (sketch) => {
  const { find, hand } = sketch;
  const [width, height] = [find.widthMm, find.lengthMm];
  const isBroken = find.state === 'broken';
  const curve = outline(isBroken ? brokenTop(STUMP, hand) : mirrored(AXE), width, height, hand, 0.006);
  return {
    face: faceOf(curve, width, height, [
      ...ground(curve, width, height, sketch),
      ...(isBroken ? breakScars(width, height, hand) : buttScar(curve, width, height, hand)),
    ]),
    more: () => [
      sideView(find.thicknessMm, height, hand, isBroken ? STUMP_SIDE : SIDE),
      sectionView('lens', width, find.thicknessMm, hand, find),
    ],
    cutAtMm: height * 0.5,
  };
};

function ground(curve: Curve, width: number, height: number, { hand, isSmall }: Sketch): Mark[] {
  const bevel: Point[] = [];
  for (let step = 0; step <= 8; step += 1) {
    const x = width * (0.06 + 0.11 * step);
    const dip = 1 - (step / 4 - 1) ** 2;
    bevel.push([x, height * 0.865 + height * 0.045 * dip]);
  }
  const from = edgeAt(curve.points, height * 0.86, 'left');
  const to = edgeAt(curve.points, height * 0.86, 'right');
  const line = openCurve([from, ...bevel.slice(1, -1), to]);
  const shade = stipple(
    curve.points,
    Math.max(width, height * 0.5) * (isSmall ? 0.07 : 0.05),
    hand,
    ([x, y]) => {
      const across = x / width - 0.5;
      return y > height * 0.84 ? 0 : Math.max(0, (across - 0.14) * 2.6);
    },
  );
  return [
    { ink: 'ridge', path: line.path, part: 'edge' },
    { ink: 'stipple', path: shade, part: 'ground' },
    {
      ink: 'scratch',
      path: strokes(curve.points, isSmall ? 16 : 30, Math.PI / 2, height * 0.09, hand),
      part: 'ground',
    },
  ];
}

function buttScar(curve: Curve, width: number, height: number, hand: Hand): Mark[] {
  const y = height * hand.within(0.05, 0.09);
  const left = edgeAt(curve.points, y, 'left');
  const top = edgeAt(curve.points, height * 0.008, 'right');
  const scar = openCurve([left, [width * 0.42, height * 0.14], [width * 0.55, height * 0.1], top]);
  return [{ ink: 'retouch', path: scar.path, part: 'butt' }];
}

function breakScars(width: number, height: number, hand: Hand): Mark[] {
  const rim = openCurve(
    jagged([width * 0.06, height * 0.1], [width * 0.94, height * 0.12], 5, height * 0.015, hand),
  );
  const ghost = openCurve([
    [width * 0.07, height * 0.02],
    [width * 0.12, -height * 0.2],
    [width * 0.2, -height * 0.42],
  ]);
  const other = openCurve([
    [width * 0.93, height * 0.02],
    [width * 0.88, -height * 0.2],
    [width * 0.8, -height * 0.42],
  ]);
  return [
    { ink: 'ridge', path: rim.path, part: 'break' },
    { ink: 'dash', path: ghost.path + other.path, part: 'missing' },
  ];
}

export const axeRoughout: Drawer = ({ find, hand, isSmall }) => {
  const [width, height] = [find.widthMm, find.lengthMm];
  const rows = mirrored(ROUGH);
  const curve = outline(rows, width, height, hand, 0.024);
  const marks = facets(curve, width, height, hand, {
    count: isSmall ? 5 : 6,
    ripples: isSmall ? 2 : 2.8,
    from: 0.03,
    to: 0.97,
    lean: 0.2,
  });
  return {
    face: faceOf(curve, width, height, [
      ...marks,
      ...(find.state === 'broken' ? [snap(curve, height, hand)] : []),
    ]),
    more: () => [
      sideView(find.thicknessMm, height, hand, SIDE),
      sectionView('lens', width, find.thicknessMm, hand, find),
    ],
    cutAtMm: height * 0.5,
  };
};

function snap(curve: Curve, height: number, hand: Hand): Mark {
  const from = edgeAt(curve.points, height * 0.36, 'left');
  const to = edgeAt(curve.points, height * 0.42, 'right');
  return { ink: 'line', path: linePath(jagged(from, to, 8, height * 0.016, hand)), part: 'break' };
}

const CHIP: readonly Row[] = [
  [-0.2, 0, 'corner'],
  [0.16, 0.02, 'corner'],
  [0.42, 0.26],
  [0.5, 0.6, 'corner'],
  [0.22, 0.93],
  [-0.1, 1, 'corner'],
  [-0.46, 0.72],
  [-0.5, 0.45],
  [-0.36, 0.18],
];

export const groundEdgeFragment: Drawer = ({ find, hand, isSmall }) => {
  const [width, height] = [find.widthMm, find.lengthMm];
  const curve = outline(CHIP, width, height, hand, 0.03);
  const face = struckFace(
    curve.points,
    [
      {
        line: [
          [0.98, 0.36],
          [0.55, 0.5],
          [0.06, 0.7],
        ],
      },
      {
        line: [
          [0.55, 0.5],
          [0.5, 0.75],
          [0.44, 1],
        ],
      },
    ],
    width,
    height,
    hand,
    0,
  );
  const [upper] = [...face.scars].sort((a, b) => mean(a) - mean(b));
  const scarred = struckFace(curve.points, [], width, height, hand, 0);
  const smooth = upper ?? scarred.scars[0] ?? curve.points;
  const lower = face.scars.filter((scar) => scar !== smooth);
  const arcs = lower.flatMap((scar) => struckFace(scar, [], width, height, hand, isSmall ? 0.7 : 1.1).marks);
  return {
    face: faceOf(curve, width, height, [
      ...face.marks,
      ...arcs,
      {
        ink: 'scratch',
        path: strokes(smooth, isSmall ? 60 : 120, -1.15, height * 0.2, hand),
        part: 'ground',
      },
    ]),
    more: () => [
      sideView(find.thicknessMm, height, hand),
      sectionView('triangle', width, find.thicknessMm, hand, find),
    ],
    cutAtMm: height * 0.5,
  };
};

const mean = (points: readonly Point[]): number => points.reduce((sum, [, y]) => sum + y, 0) / points.length;
