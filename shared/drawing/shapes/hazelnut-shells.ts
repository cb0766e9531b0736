import { boxOf, openCurve, type Shift } from '../curve.ts';
import type { Mark } from '../mark.ts';
import { outline, type Row } from '../outline.ts';
import type { Point } from '../point.ts';
import type { Drawer, Sketch } from '../sketch.ts';

const SHELL: readonly Row[] = [
  [0, 0],
  [0.4, 0.14],
  [0.48, 0.5],
  [0, 1, 'corner'],
  [-0.48, 0.5],
  [-0.4, 0.14],
];

/** A shell with a piece broken out of its top. */
const SHARD: readonly Row[] = [
  [0, 0],
  [0.4, 0.14],
  [0.5, 0.52],
  [0.34, 0.8, 'corner'],
  [0.12, 0.62, 'corner'],
  [-0.06, 0.86, 'corner'],
  [-0.3, 0.7, 'corner'],
  [-0.44, 0.9, 'corner'],
  [-0.5, 0.5],
  [-0.4, 0.14],
];

/** Where shells lie in a cluster, in shell widths and lengths, and how they are turned, degrees. */
const CLUSTER: readonly (readonly [x: number, y: number, turn: number])[] = [
  [1.3, 1.25, 0],
  [0.1, 0.85, -28],
  [2.55, 0.95, 35],
  [0.95, 0.0, 60],
  [1.95, -0.1, -50],
  [0.35, 2.15, 130],
  [2.3, 2.2, -140],
];

/** Half shells, each as long and wide as the record says; as many as are counted, up to seven. */
export const hazelnutShells: Drawer = (sketch) => {
  const { find } = sketch;
  const count = Math.max(1, Math.min(CLUSTER.length, find.count));
  // Alone it stands upright at the corner, as every other face does.
  const laid = count === 1 ? [[0, 0, 0] as const] : CLUSTER.slice(0, count);
  // A broken rim's corners stand a little outside an ellipse.
  const room = count === 1 ? 1 : 1.12;
  const box = boxOf(laid.flatMap((place) => reachOf(place, find.widthMm, find.lengthMm, room)));
  const marks = laid.flatMap(([x, y, turn], index) =>
    shell(sketch, [x - box.x / find.widthMm, y - box.y / find.lengthMm, turn], index),
  );
  return { face: { part: 'face', widthMm: box.width, heightMm: box.height, marks }, more: () => [] };
};

/** The corners of the box round a turned shell, taken as an ellipse. */
function reachOf([x, y, turnDegrees]: (typeof CLUSTER)[number], w: number, h: number, room: number): Point[] {
  const turn = (turnDegrees * Math.PI) / 180;
  const reachX = room * Math.hypot((w / 2) * Math.cos(turn), (h / 2) * Math.sin(turn));
  const reachY = room * Math.hypot((w / 2) * Math.sin(turn), (h / 2) * Math.cos(turn));
  const [middleX, middleY] = [(x + 0.5) * w, (y + 0.5) * h];
  return [
    [middleX - reachX, middleY - reachY],
    [middleX + reachX, middleY + reachY],
  ];
}

function shell(
  { find, hand, isSmall }: Sketch,
  [x, y, turnDegrees]: readonly [number, number, number],
  index: number,
): Mark[] {
  const [w, h] = [find.widthMm, find.lengthMm];
  const turn = (turnDegrees * Math.PI) / 180;
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  const at: Point = [x * w, y * h];
  const put: Shift = ([px, py]) => {
    const [dx, dy] = [px - w / 2, py - h / 2];
    return [at[0] + w / 2 + dx * cos - dy * sin, at[1] + h / 2 + dx * sin + dy * cos];
  };
  const isHollow = index % 2 === 1;
  const curve = outline(isHollow ? SHARD : SHELL, w, h, hand, 0.015, put);
  const line = (points: readonly Point[]): string =>
    openCurve(points.map((point) => put([point[0] * w, point[1] * h]))).path;
  if (isHollow) {
    const rim = line([
      [0.2, 0.36],
      [0.14, 0.62],
      [0.34, 0.86],
      [0.66, 0.86],
      [0.86, 0.62],
      [0.8, 0.36],
    ]);
    const dark = isSmall
      ? ''
      : line([
          [0.28, 0.5],
          [0.3, 0.66],
          [0.42, 0.76],
        ]);
    return [
      { ink: 'outline', path: curve.path, part: 'shell' },
      { ink: 'ridge', path: rim + dark, part: 'hollow' },
    ];
  }
  const ribs = [0.3, 0.5, 0.7].map((part) =>
    line([
      [0.5 + (part - 0.5) * 0.3, 0.2],
      [part + (part - 0.5) * 0.3, 0.5],
      [part, 0.86],
    ]),
  );
  return [
    { ink: 'outline', path: curve.path, part: 'shell' },
    { ink: 'retouch', path: (isSmall ? ribs.slice(1) : ribs).join(''), part: 'ribs' },
  ];
}
