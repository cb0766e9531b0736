import { openCurve, type Curve } from '../curve.ts';
import type { FindToDraw } from '../drawing.ts';
import type { Hand } from '../hand.ts';
import type { Mark } from '../mark.ts';
import { outline, shards, type Row } from '../outline.ts';
import { linePath } from '../path.ts';
import { away, between, type Point } from '../point.ts';
import { insideParts } from '../region.ts';
import { cut } from '../section.ts';
import type { Drawer, Sketch, View } from '../sketch.ts';
import { stipple } from '../texture.ts';
import { faceOf } from './views.ts';

/** A piece of pot from outside, its wall cut at the left: grooves, a raised cordon, or plain. */
export const groovedWareSherd: Drawer = (sketch) => {
  const { find, hand, isSmall } = sketch;
  const [width, height] = [find.widthMm, find.lengthMm];
  const curve = outline(shards(hand.happens(0.5) ? 8 : 7, hand), width, height, hand, 0);
  const decoration = find.decoration ?? 'grooved';
  const gap = Math.max(width, height) * (isSmall ? 0.09 : 0.07);
  const grit = stipple(
    curve.points,
    gap,
    hand,
    ([x, y]) => (decoration === 'plain' ? 0.3 : 0.1) + (x / width + y / height > 1.5 ? 0.3 : 0),
  );
  return {
    face: faceOf(curve, width, height, [
      ...pattern(decoration, curve, width, height, sketch),
      { ink: 'stipple', path: grit, part: 'fabric' },
    ]),
    more: () => [],
    beside: wall(find, height, hand, decoration === 'cordon'),
  };
};

function pattern(decoration: string, curve: Curve, width: number, height: number, sketch: Sketch): Mark[] {
  const level = (part: number): string =>
    insideParts(curve.points, [-1, height * part], [width + 1, height * part])
      .map(([from, to]) => {
        const middle = between(from, to, 0.5);
        return openCurve([from, [middle[0], middle[1] + height * 0.018], to]).path;
      })
      .join('');
  const levels = (...parts: readonly number[]): string => parts.map(level).join('');
  if (decoration === 'plain') return smoothing(curve, width, height, sketch.hand);
  if (decoration === 'cordon') {
    return [
      { ink: 'line', path: levels(0.46, 0.6), part: 'cordon' },
      { ink: 'hatch', path: cordonShade(width, height, curve.points), part: 'cordon' },
      { ink: 'ridge', path: levels(0.24, 0.32) + zigzag(curve, width, height, 0.72, 0.88), part: 'grooves' },
    ];
  }
  return [
    {
      ink: 'ridge',
      path: levels(0.14, 0.22, 0.3) + zigzag(curve, width, height, 0.38, 0.62) + levels(0.7, 0.78, 0.86),
      part: 'grooves',
    },
  ];
}

/** A plain sherd shows the long soft strokes of a wiped surface, and grit. */
function smoothing(curve: Curve, width: number, height: number, hand: Hand): Mark[] {
  let strokes = '';
  let grit = '';
  for (let index = 0; index < 7; index += 1) {
    const y = height * (0.16 + index * 0.11 + hand.wobble(0.02));
    const [from, to] = [width * hand.within(0, 0.5), width * hand.within(0.6, 1)];
    for (const ends of insideParts(curve.points, [from, y], [to, y + height * 0.012]))
      strokes += linePath(ends);
    const at: Point = [width * hand.within(0.2, 0.75), height * hand.within(0.2, 0.8)];
    const size = Math.max(width, height) * hand.within(0.014, 0.026);
    grit += linePath([away(at, 0.3, size), away(at, 2.2, size), away(at, 4.1, size)], true);
  }
  return [
    { ink: 'hatch', path: strokes, part: 'wiped' },
    { ink: 'stone', path: grit, part: 'grit' },
  ];
}

function zigzag(curve: Curve, width: number, height: number, from: number, to: number): string {
  const steps = 9;
  let path = '';
  for (let index = 0; index < steps; index += 1) {
    const at = (step: number): Point => [(width * step) / steps, height * (step % 2 === 0 ? to : from)];
    for (const ends of insideParts(curve.points, at(index), at(index + 1))) path += linePath(ends);
  }
  return path;
}

function cordonShade(width: number, height: number, region: readonly Point[]): string {
  let path = '';
  for (let x = width * 0.03; x < width; x += width / 16) {
    for (const part of insideParts(region, [x, height * 0.53], [x - width * 0.014, height * 0.605]))
      path += linePath(part);
  }
  return path;
}

/** The wall's section: outer face to the right. */
function wall(find: FindToDraw, height: number, hand: Hand, hasCordon: boolean): View {
  const thickness = find.thicknessMm;
  const cordon: readonly Row[] = [
    [0.3, 0.38],
    [0.5, 0.42],
    [0.5, 0.5],
    [0.3, 0.54],
  ];
  const smooth: readonly Row[] = [[0.42, 0.5]];
  const rows: readonly Row[] = [
    [-0.4, 0, 'corner'],
    [0.3, 0.02, 'corner'],
    [0.28, 0.3],
    ...(hasCordon ? cordon : smooth),
    [0.3, 0.7],
    [hasCordon ? 0.36 : 0.5, 0.98, 'corner'],
    [-0.25, 1, 'corner'],
    [-0.46, 0.6],
    [-0.5, 0.3],
  ];
  const curve = outline(rows, thickness, height, hand, 0.008);
  return { part: 'section', widthMm: thickness, heightMm: height, marks: cut(curve, find) };
}
