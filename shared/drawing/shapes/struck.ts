import { openCurve, type Curve } from '../curve.ts';
import { bowPath } from '../path.ts';
import type { Hand } from '../hand.ts';
import type { Mark } from '../mark.ts';
import { around, between, type Point } from '../point.ts';
import { isInside, middle, split, type Region } from '../region.ts';
import { ripples, shadeAt } from '../scar.ts';
import type { View } from '../sketch.ts';
import { outline, type Row } from '../outline.ts';

/** A ridge of a scar pattern in a unit box: across 0 to 1, down 0 to 1, as drawn from the outside in; it cuts the scar its middle lies in. */
export interface Ridge {
  readonly line: readonly Point[];
}

export interface Face {
  readonly marks: readonly Mark[];
  readonly scars: readonly Region[];
}

/** A struck face: ridges cut it into scars, each with its ripples round a blow from below or from the side. */
export function struckFace(
  face: Region,
  ridges: readonly Ridge[],
  widthMm: number,
  heightMm: number,
  hand: Hand,
  density: number,
): Face {
  let scars: Region[] = [face];
  const marks: Mark[] = [];
  for (const ridge of ridges) {
    const line = ridge.line.map(([x, y]): Point => [
      (x + hand.wobble(0.035)) * widthMm,
      (y + hand.wobble(0.035)) * heightMm,
    ]);
    const heart = around(line, line.length >> 1);
    const at = Math.max(
      0,
      scars.findIndex((scar) => isInside(scar, heart)),
    );
    const parted = split(around(scars, at), line);
    scars = [...scars.filter((_, index) => index !== at), ...parted.sides];
    marks.push({ ink: 'ridge', path: parted.path, part: 'ridge' });
  }
  if (density > 0) {
    for (const scar of scars) marks.push(...scarRipples(scar, widthMm, heightMm, hand, density));
  }
  return { marks, scars };
}

function scarRipples(scar: Region, widthMm: number, heightMm: number, hand: Hand, density: number): Mark[] {
  const heart = middle(scar);
  const lowest = scar.reduce((low, point) => (point[1] > low[1] ? point : low));
  const blow: Point = between([widthMm / 2, heightMm * 1.04], [lowest[0], lowest[1] + heightMm * 0.05], 0.75);
  const shade = shadeAt(heart, widthMm, heightMm);
  const reach = Math.max(...scar.map((point) => Math.hypot(point[0] - blow[0], point[1] - blow[1])));
  const count = Math.round((2.6 + 5.4 * shade) * density * Math.min(1.25, reach / heightMm + 0.3));
  return ripples(scar, blow, count, shade, hand, Math.max(widthMm, heightMm) * 0.006);
}

/** The side view of a struck piece: thick at the struck foot, thinning upward; flat underside to the left. */
const SIDE: readonly Row[] = [
  [-0.42, 0.0, 'corner'],
  [0.25, 0.015, 'corner'],
  [0.5, 0.2],
  [0.42, 0.55],
  [0.2, 0.85],
  [-0.1, 1, 'corner'],
  [-0.2, 0.7],
  [-0.38, 0.35],
  [-0.5, 0.12],
];

export function sideView(
  thicknessMm: number,
  heightMm: number,
  hand: Hand,
  rows: readonly Row[] = SIDE,
): View {
  const curve = outline(rows, thicknessMm, heightMm, hand, rows === SIDE ? 0.03 : 0.012);
  const ridge = openCurve([
    [thicknessMm * 0.52, heightMm * 0.96],
    [thicknessMm * 0.62, heightMm * 0.6],
    [thicknessMm * 0.44, heightMm * 0.12],
  ]);
  return {
    part: 'edge',
    widthMm: thicknessMm,
    heightMm,
    marks: [
      { ink: 'outline', path: curve.path },
      { ink: 'ridge', path: ridge.path },
    ],
  };
}

/** A row of small scars along part of an edge, running inward: short steep chips. */
export function retouch(
  edge: readonly Point[],
  heart: Point,
  depthPart: number,
  pitchMm: number,
  hand: Hand,
): Mark[] {
  const marks: Mark[] = [];
  let walked = 0;
  let before = around(edge, 0);
  let start = before;
  for (const point of edge.slice(1)) {
    walked += Math.hypot(point[0] - before[0], point[1] - before[1]);
    before = point;
    if (walked < pitchMm) continue;
    walked = 0;
    marks.push({
      ink: 'chip',
      path: chip(start, point, heart, depthPart * hand.within(0.75, 1.2)),
      part: 'retouch',
    });
    start = point;
  }
  return marks;
}

function chip(start: Point, end: Point, heart: Point, depthPart: number): string {
  const middle = between(start, end, 0.5);
  const top = between(middle, heart, depthPart * 1.1);
  const reach = depthPart * 1.15;
  return bowPath(start, [between(start, heart, reach), top], [between(end, heart, reach), end]);
}

/** Ripples that spread over a bulging struck underside from its foot, and the swelling below the blow. */
export function underside(curve: Curve, widthMm: number, heightMm: number, hand: Hand): Mark[] {
  const blow: Point = [widthMm * 0.5, heightMm * 1.01];
  const size = Math.min(widthMm * 0.2, heightMm * 0.16);
  const bulb: Point[] = [];
  for (let step = 0; step <= 6; step += 1) {
    const angle = Math.PI * (1.12 + 0.84 * (step / 6));
    bulb.push([widthMm * 0.5 + Math.cos(angle) * size, heightMm * 0.985 + Math.sin(angle) * size * 1.15]);
  }
  const small = size * 0.4;
  const bulbScar = openCurve([
    [widthMm * 0.5 - small, heightMm * 0.985 - size * 0.5],
    [widthMm * 0.5 - small * 0.4, heightMm * 0.985 - size * 0.95],
    [widthMm * 0.5 + small * 0.5, heightMm * 0.985 - size * 0.6],
  ]);
  const rings = ripples(curve.points, blow, 6, 0.75, hand, heightMm * 0.006);
  return [
    ...rings.slice(1),
    { ink: 'ridge', path: openCurve(bulb).path, part: 'bulb' },
    { ink: 'retouch', path: bulbScar.path, part: 'bulb' },
  ];
}
