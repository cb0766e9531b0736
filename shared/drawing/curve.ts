import { curvePath, type Piece } from './path.ts';
import { around, type Point } from './point.ts';

/** A knot of an outline; a corner breaks the curve, and two corners in a row are joined by a straight line. */
export interface Knot {
  readonly at: Point;
  readonly corner: boolean;
}

/** A drawn curve: its path, and the same curve as many short lines for measuring and cutting. */
export interface Curve {
  readonly path: string;
  readonly points: readonly Point[];
  /** The same curve seen in a mirror that stands at the middle of a width, mm. */
  readonly mirrored: (widthMm: number) => string;
}

/** Cubic pieces through knots: Catmull and Rom's curve, broken at corners. Source: Catmull & Rom 1974, in Barnhill & Riesenfeld. */
function pieces(knots: readonly Knot[], closed: boolean): Piece[] {
  const last = closed ? knots.length : knots.length - 1;
  const result: Piece[] = [];
  for (let index = 0; index < last; index += 1) {
    const from = around(knots, index);
    const to = around(knots, index + 1);
    const fromIsEnd = from.corner || (!closed && index === 0);
    const toIsEnd = to.corner || (!closed && index + 1 === knots.length - 1);
    const before = fromIsEnd ? from.at : around(knots, index - 1).at;
    const after = toIsEnd ? to.at : around(knots, index + 2).at;
    result.push([from.at, handle(from.at, before, to.at), handle(to.at, after, from.at), to.at]);
  }
  return result;
}

const handle = (at: Point, behind: Point, ahead: Point): Point => [
  at[0] + (ahead[0] - behind[0]) / 6,
  at[1] + (ahead[1] - behind[1]) / 6,
];

function alongPiece([start, first, second, end]: Piece, part: number): Point {
  const rest = 1 - part;
  const [a, b, c, d] = [rest ** 3, 3 * rest ** 2 * part, 3 * rest * part ** 2, part ** 3];
  return [
    a * start[0] + b * first[0] + c * second[0] + d * end[0],
    a * start[1] + b * first[1] + c * second[1] + d * end[1],
  ];
}

function sample(laid: readonly Piece[], closed: boolean, steps: number): Point[] {
  const points: Point[] = [];
  for (const piece of laid) {
    for (let step = 0; step < steps; step += 1) points.push(alongPiece(piece, step / steps));
  }
  if (!closed) points.push(around(laid, -1)[3]);
  return points;
}

/** The least box round some points, mm. */
export function boxOf(points: readonly Point[]): { x: number; y: number; width: number; height: number } {
  let [left, top, right, foot] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const [x, y] of points) {
    left = Math.min(left, x);
    right = Math.max(right, x);
    top = Math.min(top, y);
    foot = Math.max(foot, y);
  }
  return { x: left, y: top, width: right - left, height: foot - top };
}

/** Steps a piece is cut into for measuring. */
const STEPS = 8;

const turned = (laid: readonly Piece[], isClosed: boolean, widthMm: number): string => {
  const turn = ([x, y]: Point): Point => [widthMm - x, y];
  return curvePath(
    laid.map(([start, first, second, end]): Piece => [turn(start), turn(first), turn(second), turn(end)]),
    isClosed,
  );
};

/** A closed curve through knots as they stand. */
export function closedCurve(knots: readonly Knot[]): Curve {
  const laid = pieces(knots, true);
  return {
    path: curvePath(laid, true),
    points: sample(laid, true, STEPS),
    mirrored: (width) => turned(laid, true, width),
  };
}

/** An open curve through points as they stand. */
export function openCurve(points: readonly Point[]): Curve {
  const laid = pieces(
    points.map((at) => ({ at, corner: false })),
    false,
  );
  return {
    path: curvePath(laid),
    points: sample(laid, false, STEPS),
    mirrored: (width) => turned(laid, false, width),
  };
}

/** Moves a drawn point: a shift, a turn. */
export type Shift = (point: Point) => Point;

/** A closed curve through knots, then drawn out or pressed together so that it fills a box from 0, 0 exactly, then shifted. */
export function fittedCurve(
  knots: readonly Knot[],
  widthMm: number,
  heightMm: number,
  shift: Shift = (point) => point,
): Curve {
  const loose = pieces(knots, true);
  const box = boxOf(sample(loose, true, 16));
  const fit = ([x, y]: Point): Point =>
    shift([((x - box.x) / box.width) * widthMm, ((y - box.y) / box.height) * heightMm]);
  const laid = loose.map(([start, first, second, end]): Piece => [
    fit(start),
    fit(first),
    fit(second),
    fit(end),
  ]);
  return {
    path: curvePath(laid, true),
    points: sample(laid, true, STEPS),
    mirrored: (width) => turned(laid, true, width),
  };
}
