import { openCurve } from '../curve.ts';
import type { Mark } from '../mark.ts';
import { outline, type Row } from '../outline.ts';
import { linePath } from '../path.ts';
import { apart, around, away, type Point } from '../point.ts';
import { insideParts } from '../region.ts';
import { sectionView } from '../section.ts';
import { boxOf } from '../curve.ts';
import type { Drawer } from '../sketch.ts';

/** A cord's middle line in a loose loop, scaled so that its length is the cord's. */
function cordLine(lengthMm: number): Point[] {
  const unit = openCurve([
    [0, 0.3],
    [0.5, 0.02],
    [1.05, 0.12],
    [1.3, 0.5],
    [0.95, 0.82],
    [0.55, 0.66],
    [0.62, 0.3],
    [1.1, 0.02],
    [1.75, 0.2],
  ]).points;
  const long = lengthOf(unit);
  return unit.map(([x, y]): Point => [(x / long) * lengthMm, (y / long) * lengthMm]);
}

const lengthOf = (points: readonly Point[]): number =>
  points.slice(1).reduce((sum, point, index) => sum + apart(point, around(points, index)), 0);

export const cordage: Drawer = ({ find, hand, isSmall }) => {
  const half = find.widthMm / 2;
  const line = cordLine(find.lengthMm);
  const box = boxOf(line);
  const at = line.map(([x, y]): Point => [x - box.x + half, y - box.y + half]);
  const marks: Mark[] = [];
  const pieces = 3;
  const size = Math.ceil(at.length / pieces);
  for (let piece = 0; piece < pieces; piece += 1) {
    const part = at.slice(piece * size, (piece + 1) * size + 1);
    if (part.length > 1) marks.push(...cordPiece(part, half, isSmall ? 2.4 : 1.7));
  }
  const ends = [around(at, 0), around(at, -1)];
  const frays = ends.flatMap((end, index) =>
    [-0.5, 0, 0.5].map((turn) =>
      linePath([
        end,
        away(end, (index === 0 ? Math.PI * 0.85 : 0.15) + turn, find.widthMm * hand.within(0.5, 0.9)),
      ]),
    ),
  );
  const width = box.width + find.widthMm;
  const height = box.height + find.widthMm;
  return {
    face: {
      part: 'face',
      widthMm: width,
      heightMm: height,
      marks: [{ ink: 'scratch', path: frays.join(''), part: 'frayed-end' }, ...marks],
    },
    more: () => [sectionView('oval', find.widthMm, find.thicknessMm, hand)],
  };
};

function cordPiece(part: readonly Point[], half: number, pitch: number): Mark[] {
  const left: Point[] = [];
  const right: Point[] = [];
  let twist = '';
  let walked = 0;
  for (const [index, point] of part.entries()) {
    const before = part[index - 1] ?? point;
    const after = part[index + 1] ?? point;
    const along = Math.atan2(after[1] - before[1], after[0] - before[0]);
    left.push(away(point, along - Math.PI / 2, half));
    right.push(away(point, along + Math.PI / 2, half));
    walked += apart(point, before);
    if (walked < half * pitch) continue;
    walked = 0;
    const [from, to] = [
      away(away(point, along, -half * 0.7), along + Math.PI / 2, half),
      away(away(point, along, half * 0.7), along - Math.PI / 2, half),
    ];
    twist += openCurve([from, away(point, along - 0.7, half * 0.2), to]).path;
  }
  return [
    {
      ink: 'outline',
      path: openCurve(left).path + linePath([...left, ...[...right].reverse()], true),
      part: 'strand',
    },
    { ink: 'ridge', path: twist, part: 'twist' },
  ];
}

const LUMP: readonly Row[] = [
  [-0.5, 0.3, 'corner'],
  [-0.22, 0.04, 'corner'],
  [0.2, 0, 'corner'],
  [0.46, 0.16, 'corner'],
  [0.5, 0.62, 'corner'],
  [0.26, 0.94, 'corner'],
  [-0.12, 1, 'corner'],
  [-0.44, 0.84, 'corner'],
];

/** A black block whose top end shows growth rings; cracks are left white. */
export const charcoal: Drawer = ({ find, hand, isSmall }) => {
  const [width, height] = [find.widthMm, find.lengthMm];
  const curve = outline(LUMP, width, height, hand, 0.02);
  const ends: Point[] = [around(curve.points, 0), around(curve.points, 0)];
  const top = 0.62;
  const seam: Point[] = [];
  for (let step = 0; step <= 6; step += 1)
    seam.push([
      (width * step) / 6,
      height * (1 - top) + height * 0.1 * Math.sin((step / 6) * Math.PI) + hand.wobble(height * 0.012),
    ]);
  const upper = curve.points.filter((point) => point[1] < seamY(seam, point[0]));
  const lowerPoints = curve.points.filter((point) => point[1] >= seamY(seam, point[0]));
  const lower = [
    ...lowerPoints,
    ...[...seam]
      .filter(([x]) => x > width * 0.04 && x < width * 0.96)
      .sort((a, b) =>
        lowerPoints.length > 0 && around(lowerPoints, -1)[0] > width / 2 ? b[0] - a[0] : a[0] - b[0],
      ),
  ];
  let rings = '';
  for (let index = 1; index <= (isSmall ? 3 : 5); index += 1) {
    const y = height * (0.02 + 0.065 * index * (isSmall ? 1.5 : 1));
    for (const [from, to] of insideParts(upper.length > 2 ? upper : curve.points, [-1, y], [width + 1, y])) {
      rings += openCurve([from, [(from[0] + to[0]) / 2, y + height * 0.05], to]).path;
    }
  }
  let cracks = '';
  for (let index = 1; index <= 3; index += 1) {
    const y = height * (0.48 + 0.13 * index);
    cracks += linePath([
      [width * hand.within(0.1, 0.3), y + hand.wobble(height * 0.03)],
      [width * 0.5, y + hand.wobble(height * 0.02)],
      [width * hand.within(0.7, 0.9), y + hand.wobble(height * 0.03)],
    ]);
  }
  cracks += linePath([
    [width * 0.36, height * 0.52],
    [width * 0.4, height * 0.72],
    [width * 0.37, height * 0.92],
  ]);
  cracks += linePath([
    [width * 0.66, height * 0.52],
    [width * 0.64, height * 0.9],
  ]);
  return {
    face: {
      part: 'face',
      widthMm: width,
      heightMm: height,
      marks: [
        { ink: 'outline', path: curve.path, part: 'outline' },
        { ink: 'fill', path: linePath(lower, true), part: 'burnt' },
        { ink: 'gap', path: cracks, part: 'cracks' },
        { ink: 'ridge', path: rings, part: 'rings' },
      ],
    },
    more: () => (ends.length > 0 ? [] : []),
  };
};

function seamY(seam: readonly Point[], x: number): number {
  for (const [index, point] of seam.entries()) {
    const after = seam[index + 1];
    if (after !== undefined && x >= point[0] && x <= after[0])
      return point[1] + ((after[1] - point[1]) * (x - point[0])) / (after[0] - point[0] || 1);
  }
  return around(seam, -1)[1];
}

const SHELL: readonly Row[] = [
  [0, 0],
  [0.34, 0.1],
  [0.5, 0.42],
  [0.34, 0.8],
  [0, 1, 'corner'],
  [-0.34, 0.8],
  [-0.5, 0.42],
  [-0.34, 0.1],
];

/** Half shells in rows of three, each as long and wide as the record says. */
export const hazelnutShells: Drawer = ({ find, hand, isSmall }) => {
  const count = Math.max(1, Math.min(9, find.count));
  const columns = Math.min(3, count);
  const rows = Math.ceil(count / columns);
  const [stepX, stepY] = [find.widthMm * 1.35, find.lengthMm * 1.3];
  const marks: Mark[] = [];
  for (let index = 0; index < count; index += 1) {
    const [column, row] = [index % columns, Math.floor(index / columns)];
    const curve = outline(SHELL, find.widthMm, find.lengthMm, hand, 0.02);
    const origin: Point = [column * stepX, row * stepY];
    const put = ([x, y]: Point): Point => [origin[0] + x, origin[1] + y];
    const [w, h] = [find.widthMm, find.lengthMm];
    marks.push({ ink: 'outline', path: linePath(curve.points.map(put), true), part: 'shell' });
    if (index % 2 === 0) {
      const inner = outline(SHELL, w * 0.66, h * 0.62, hand, 0.03).points.map(([x, y]): Point =>
        put([x + w * 0.17, y + h * 0.24]),
      );
      marks.push({ ink: 'ridge', path: linePath(inner, true), part: 'hollow' });
      marks.push({
        ink: 'hatch',
        path: [0.3, 0.42, 0.54]
          .map(
            (x) =>
              openCurve([put([w * x, h * 0.4]), put([w * (x - 0.04), h * 0.55]), put([w * x, h * 0.7])]).path,
          )
          .join(''),
      });
    } else {
      const ribs = (isSmall ? [0.5] : [0.32, 0.5, 0.68]).map(
        (x) =>
          openCurve([
            put([w * 0.5 + (x - 0.5) * w * 0.2, h * 0.14]),
            put([w * x + (x - 0.5) * w * 0.4, h * 0.5]),
            put([w * x, h * 0.86]),
          ]).path,
      );
      marks.push({ ink: 'retouch', path: ribs.join(''), part: 'ribs' });
    }
  }
  return {
    face: {
      part: 'face',
      widthMm: stepX * (columns - 1) + find.widthMm,
      heightMm: stepY * (rows - 1) + find.lengthMm,
      marks,
    },
    more: () => [],
  };
};
