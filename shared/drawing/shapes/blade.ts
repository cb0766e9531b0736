import { breakOff } from '../break-off.ts';
import { outline, type Row } from '../outline.ts';
import { dotPath, linePath } from '../path.ts';
import { around, type Point } from '../point.ts';
import { sectionView } from '../section.ts';
import { shadeEdge } from '../shade-edge.ts';
import type { Drawer, Sketch, Sketched } from '../sketch.ts';
import { struckHere } from './flake.ts';
import { sideView, struckFace, type Ridge } from './struck.ts';

const BLADE: readonly Row[] = [
  [-0.2, 0, 'corner'],
  [0.2, 0, 'corner'],
  [0.46, 0.12],
  [0.5, 0.5],
  [0.46, 0.85],
  [0.12, 1, 'corner'],
  [-0.3, 0.96],
  [-0.5, 0.6],
  [-0.45, 0.12],
];

const PATTERNS: readonly (readonly Ridge[])[] = [
  [
    {
      line: [
        [0.4, 0],
        [0.34, 0.45],
        [0.4, 1],
      ],
    },
    {
      line: [
        [0.62, 0.02],
        [0.68, 0.5],
        [0.58, 1],
      ],
    },
  ],
  [
    {
      line: [
        [0.55, 0],
        [0.44, 0.5],
        [0.5, 1],
      ],
    },
    {
      line: [
        [0.46, 0.32],
        [0.7, 0.24],
        [0.98, 0.18],
      ],
    },
  ],
];

export const blade: Drawer = (sketch) => long(sketch, false);
export const serratedFlake: Drawer = (sketch) => long(sketch, true);

function long(sketch: Sketch, isToothed: boolean): Sketched {
  const { find, hand, isSmall } = sketch;
  const [width, height] = [find.widthMm, find.lengthMm];
  const whole = outline(BLADE, width, height, hand, 0.015);
  const curve =
    find.state === 'broken'
      ? breakOff(whole, width, height, -Math.PI / 2 + hand.wobble(0.2), 0.2, hand)
      : whole;
  const pattern = around(PATTERNS, Math.floor(hand.within(0, PATTERNS.length)));
  const pitch = height / (isSmall ? 20 : 32);
  const edge = isToothed ? toothed(curve.points, width, height, pitch) : curve.points;
  const face = struckFace(curve.points, pattern, width, height, hand, isSmall ? 0.45 : 0.8);
  return {
    face: {
      part: 'face',
      widthMm: width,
      heightMm: height,
      marks: [
        { ink: 'outline', path: isToothed ? linePath(edge, true) : curve.path, part: 'outline' },
        ...face.marks,
        ...(isToothed ? [gloss(curve.points, width, height, pitch)] : []),
        struckHere(width, height),
        ...(isToothed ? [] : [shadeEdge(curve.points, height)]),
      ],
    },
    more: () => [
      sideView(find.thicknessMm, height, hand),
      sectionView('trapezoid', width, find.thicknessMm, hand, find),
    ],
    cutAtMm: height * 0.5,
  };
}

/** The right side cut into teeth between an eighth and seven eighths of its height. */
function toothed(points: readonly Point[], width: number, height: number, pitch: number): Point[] {
  const result: Point[] = [];
  let isCut = false;
  for (const point of points) {
    const isTeeth = point[0] > width * 0.6 && point[1] > height * 0.1 && point[1] < height * 0.88;
    if (!isTeeth) result.push(point);
    else if (!isCut) {
      isCut = true;
      result.push(...teeth(points, width, height, pitch));
    }
  }
  return result;
}

function teeth(points: readonly Point[], width: number, height: number, pitch: number): Point[] {
  const result: Point[] = [];
  for (let y = height * 0.87; y > height * 0.11; y -= pitch) {
    const x = edgeAt(points, width, y);
    result.push([x, y], [x - pitch * 0.7, y - pitch * 0.4]);
  }
  return result;
}

/** Where the right edge is at a height. */
function edgeAt(points: readonly Point[], width: number, y: number): number {
  let x = width / 2;
  let before = around(points, -1);
  for (const point of points) {
    if ((point[1] - y) * (before[1] - y) <= 0 && point[1] !== before[1]) {
      const part = (y - before[1]) / (point[1] - before[1]);
      x = Math.max(x, before[0] + (point[0] - before[0]) * part);
    }
    before = point;
  }
  return x;
}

function gloss(
  points: readonly Point[],
  width: number,
  height: number,
  pitch: number,
): { ink: 'stipple'; path: string; part: string } {
  let path = '';
  for (let y = height * 0.84; y > height * 0.14; y -= pitch * 0.8) {
    path += dotPath([edgeAt(points, width, y) - pitch * 1.4, y]);
  }
  return { ink: 'stipple', path, part: 'gloss' };
}
