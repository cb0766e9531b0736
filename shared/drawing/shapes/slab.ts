import { jagged } from '../break-off.ts';
import { closedCurve, openCurve, type Curve } from '../curve.ts';
import type { FindToDraw } from '../drawing.ts';
import type { Hand } from '../hand.ts';
import type { Mark } from '../mark.ts';
import { flipped, outline, type Row } from '../outline.ts';
import { swellPath } from '../path.ts';
import { around, away, type Point } from '../point.ts';
import { isInside } from '../region.ts';
import { cut } from '../section.ts';
import type { Drawer, View } from '../sketch.ts';
import { stipple, strokes } from '../texture.ts';
import { faceOf } from './views.ts';

const SHARP: readonly Row[] = [
  [-0.4, 0.02, 'corner'],
  [0.1, 0.0, 'corner'],
  [0.5, 0.2, 'corner'],
  [0.42, 0.6, 'corner'],
  [0.34, 0.9],
  [0, 1],
  [-0.34, 0.94],
  [-0.5, 0.7, 'corner'],
  [-0.46, 0.4, 'corner'],
];

const ROUND: readonly Row[] = [
  [-0.49, 0.0, 'corner'],
  [-0.16, 0.06, 'corner'],
  [0.12, 0.0, 'corner'],
  [0.47, 0.05, 'corner'],
  [0.5, 0.5],
  [0.36, 0.88],
  [0, 1],
  [-0.36, 0.88],
  [-0.5, 0.5],
];

/** A piece of a stone on which axes were rubbed: a smooth hollow with fine lines along it, inside broken edges. */
export const polishingStoneFragment: Drawer = (sketch) => {
  const { find, hand, isSmall } = sketch;
  const [width, height] = [find.widthMm, find.lengthMm];
  const curve = outline(hand.happens(0.5) ? SHARP : flipped(SHARP), width, height, hand, 0.04);
  const hollow = hollowOf(width, height, 0.47, 0.52, 0.27, 0.38);
  const gap = Math.max(width, height) * (isSmall ? 0.06 : 0.056);
  return {
    face: faceOf(curve, width, height, [
      {
        ink: 'stipple',
        path: stipple(curve.points, gap, hand, (place) => (isInside(hollow.points, place) ? 0 : 0.55)),
        part: 'skin',
      },
      { ink: 'ridge', path: hollow.path, part: 'dish' },
      ...hollowShade(width, height, isSmall),
      {
        ink: 'scratch',
        path: strokes(
          hollow.points,
          isSmall ? 40 : 74,
          Math.PI * 0.44,
          height * 0.34,
          hand,
          ([x]) => x > width * 0.36,
        ),
        part: 'ground',
      },
    ]),
    more: () => [dished(find, height, hand)],
    cutAtMm: height * 0.55,
  };
};

/** A piece of a grain-grinding stone: one round end, a broken end, and a pecked face worn into a hollow. */
export const quernFragment: Drawer = (sketch) => {
  const { find, hand, isSmall } = sketch;
  const [width, height] = [find.widthMm, find.lengthMm];
  const curve = outline(ROUND, width, height, hand, 0.012);
  const gap = Math.max(width, height) * (isSmall ? 0.062 : 0.057);
  const lip = height * 0.86;
  const reach = ([x, y]: Point): number =>
    Math.hypot((x / width - 0.5) * 2, Math.min(0, y / height - 0.5) * 2);
  /** A line round the hollow from one angle to another, in halves of a turn from the left over the top. */
  const round = (part: number, from: number, to: number): Point[] =>
    Array.from({ length: 7 }, (_, step): Point => {
      const angle = Math.PI * (1 + from + ((to - from) * step) / 6);
      return [(width / 2) * (1 + Math.cos(angle) * part), (height / 2) * (1 + Math.sin(angle) * part)];
    });
  const rim = openCurve([[width * 0.1, lip], ...round(0.8, 0, 1), [width * 0.9, lip]]);
  const broken = openCurve(jagged([width * 0.012, lip], [width * 0.988, lip], 7, height * 0.014, hand));
  const dark = (isSmall ? [0.7] : [0.74, 0.67, 0.6]).map((part) => {
    const line = round(part, 0.1, 0.55);
    return swellPath(around(line, 0), around(line, 3), around(line, -1), height * 0.007);
  });
  const pecks = (place: Point): number => {
    if (place[1] > lip) return 0;
    return reach(place) > 0.8 ? 0.06 : reach(place) > 0.6 ? 0.7 : 0.42;
  };
  return {
    face: faceOf(curve, width, height, [
      { ink: 'ridge', path: rim.path, part: 'dish' },
      { ink: 'line', path: broken.path, part: 'break' },
      { ink: 'ripple', path: dark.join(''), part: 'dish' },
      { ink: 'stipple', path: stipple(curve.points, gap, hand, pecks), part: 'pecked' },
      {
        ink: 'scratch',
        path:
          strokes(
            curve.points,
            isSmall ? 30 : 48,
            1.9,
            height * 0.05,
            hand,
            ([, y]) => y > lip + height * 0.02,
          ) +
          strokes(curve.points, isSmall ? 0 : 14, 0.06, width * 0.14, hand, (place) => reach(place) < 0.5),
        part: 'ground',
      },
    ]),
    more: () => [dished(find, height, hand)],
    cutAtMm: height * 0.55,
  };
};

function hollowOf(
  width: number,
  height: number,
  x: number,
  y: number,
  reachX: number,
  reachY: number,
): Curve {
  const at: { at: Point; corner: boolean }[] = [];
  for (let step = 0; step < 8; step += 1) {
    const [turnX, turnY] = away([0, 0], (step / 8) * Math.PI * 2, 1);
    // The hollow leans a little, as the arm that rubbed swung.
    at.push({
      at: [width * (x + turnX * reachX - turnY * 0.07), height * (y + turnY * reachY)],
      corner: false,
    });
  }
  return closedCurve(at);
}

/** A hollow is dark on the side nearest the light. */
function hollowShade(width: number, height: number, isSmall: boolean): Mark[] {
  const marks: Mark[] = [];
  for (let step = 1; step <= (isSmall ? 2 : 4); step += 1) {
    const inward = step * 0.028;
    marks.push({
      ink: 'ripple',
      path: swellPath(
        [width * (0.26 + inward), height * (0.66 - inward)],
        [width * (0.24 + inward), height * (0.2 + inward)],
        [width * (0.56 - inward), height * (0.17 + inward)],
        height * 0.006,
      ),
    });
  }
  return marks;
}

/** A long section of a slab, standing up, whose worked face is hollowed. */
function dished(find: FindToDraw, height: number, hand: Hand): View {
  const thickness = find.thicknessMm;
  const rows: Row[] = [
    [-0.4, 0, 'corner'],
    [0.36, 0.02, 'corner'],
    [0.2, 0.45],
    [0.36, 0.86],
    [0.5, 0.96],
    [0.3, 1],
    [-0.3, 0.97],
    [-0.5, 0.5],
  ];
  const curve = outline(rows, thickness, height, hand, 0.01);
  return { part: 'section', widthMm: thickness, heightMm: height, marks: cut(curve, find) };
}
