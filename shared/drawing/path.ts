import { around, between, type Point } from './point.ts';

/** A drawing that reaches so far, in mm, is one of ground: a tenth of a millimetre is finer there than any line. ASM. */
const GROUND_MM = 300;

/** A length in whole hundredths of a millimetre; for ground in whole tenths of it, told in hundredths all the same. */
type Grain = (value: number) => number;

const hundredths: Grain = (value) => Math.round(value * 100);
const tenths: Grain = (value) => Math.round(value * 10) * 10;

const isFar = ([x, y]: Point): boolean => Math.abs(x) > GROUND_MM || Math.abs(y) > GROUND_MM;

/** How finely a path is told: by how far from the corner of its drawing it begins. */
const grainOf = (start: Point): Grain => (isFar(start) ? tenths : hundredths);

/** A number of hundredths in as few letters as it takes: 250 is `2.5`, -5 is `-.05`. */
function write(value: number): string {
  const size = Math.abs(value);
  const rest = size % 100;
  const whole = (size - rest) / 100;
  const sign = value < 0 ? '-' : '';
  if (rest === 0) return sign + whole;
  const places = rest % 10 === 0 ? `.${rest / 10}` : rest < 10 ? `.0${rest}` : `.${rest}`;
  return whole === 0 ? sign + places : sign + whole + places;
}

/** Numbers written one after another; a minus parts them as well as a space does. */
const next = (text: string, value: number): string =>
  value < 0 || text === '' ? text + write(value) : `${text} ${write(value)}`;

const pair = ([x, y]: Point, grain: Grain): string => next(write(grain(x)), grain(y));

/** Path data from a start and groups of points, each group one command's worth, relative to the group's start. */
function relative(
  start: Point,
  letter: string,
  groups: readonly (readonly Point[])[],
  closed: boolean,
): string {
  const grain = grainOf(start);
  let [x, y] = [grain(start[0]), grain(start[1])];
  let values = '';
  for (const group of groups) {
    let [endX, endY] = [x, y];
    for (const point of group) {
      endX = grain(point[0]);
      endY = grain(point[1]);
      values = next(next(values, endX - x), endY - y);
    }
    [x, y] = [endX, endY];
  }
  return `M${pair(start, grain)}${values === '' ? '' : letter + values}${closed ? 'z' : ''}`;
}

/** A line of straight pieces, to 0.01 mm; one that begins far out on the ground of a pit, to 0.1 mm. @example linePath([[0, 0], [1, 2]]) // 'M0 0l1 2' */
export const linePath = (points: readonly Point[], closed = false): string =>
  relative(
    around(points, 0),
    'l',
    points.slice(1).map((point) => [point]),
    closed,
  );

/** One piece of a cubic curve: start, two handles, end. */
export type Piece = readonly [Point, Point, Point, Point];

/** Cubic curves laid end to end. */
export const curvePath = (pieces: readonly Piece[], closed = false): string =>
  relative(
    around(pieces, 0)[0],
    'c',
    pieces.map(([, first, second, end]) => [first, second, end]),
    closed,
  );

/** One bowed line, or several end to end: each a handle and an end. */
export const bowPath = (from: Point, ...bows: readonly (readonly [handle: Point, to: Point])[]): string =>
  relative(from, 'q', bows, false);

/** A stroke that swells in the middle and thins to its ends, as a pen's does: a filled crescent. */
export function swellPath(from: Point, handle: Point, to: Point, swellMm: number): string {
  const middle = between(from, to, 0.5);
  const length = Math.hypot(handle[0] - middle[0], handle[1] - middle[1]);
  const [outX, outY] =
    length > 0.05
      ? [(handle[0] - middle[0]) / length, (handle[1] - middle[1]) / length]
      : unitAcross(from, to);
  const inner: Point = [handle[0] - outX * swellMm * 2, handle[1] - outY * swellMm * 2];
  return relative(
    from,
    'q',
    [
      [handle, to],
      [inner, from],
    ],
    false,
  );
}

function unitAcross(from: Point, to: Point): Point {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]) || 1;
  return [(to[1] - from[1]) / length, (from[0] - to[0]) / length];
}

/** A long thin wedge, wide at its head. */
export function wedgePath(head: Point, tail: Point, headWidthMm: number): string {
  const [acrossX, acrossY] = unitAcross(head, tail);
  const half = headWidthMm / 2;
  return linePath(
    [
      [head[0] + acrossX * half, head[1] + acrossY * half],
      tail,
      [head[0] - acrossX * half, head[1] - acrossY * half],
    ],
    true,
  );
}

/** A dot: a stroke of no length, whose round cap is what shows. */
export const dotPath = (place: Point): string => `M${pair(place, grainOf(place))}h0`;

/** A circle of four curves. */
export function circlePath(centre: Point, radiusX: number, radiusY = radiusX): string {
  const [x, y] = centre;
  // Four cubic pieces follow a circle within 0.03 % with handles of this length; Riskus, Information Technology and Control 35 (2006).
  const handle = 0.5523;
  const [a, b] = [radiusX * handle, radiusY * handle];
  const top: Point = [x, y - radiusY];
  const right: Point = [x + radiusX, y];
  const foot: Point = [x, y + radiusY];
  const left: Point = [x - radiusX, y];
  return curvePath(
    [
      [top, [x + a, y - radiusY], [x + radiusX, y - b], right],
      [right, [x + radiusX, y + b], [x + a, y + radiusY], foot],
      [foot, [x - a, y + radiusY], [x - radiusX, y + b], left],
      [left, [x - radiusX, y - b], [x - a, y - radiusY], top],
    ],
    true,
  );
}
