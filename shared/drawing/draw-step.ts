import { derive, stream } from '../chance/index.ts';
import { closedCurve, openCurve } from './curve.ts';
import { DRAWERS } from './drawers.ts';
import type { Drawing, FindToDraw } from './drawing.ts';
import { handOf, type Hand } from './hand.ts';
import { inked, markup, type Mark } from './mark.ts';
import { lump, mirrored, outline, type Row } from './outline.ts';
import { circlePath, linePath } from './path.ts';
import { ripples } from './scar.ts';
import type { Point } from './point.ts';
import { facets } from './shapes/biface.ts';
import { stipple, strokes } from './texture.ts';

/** The steps of making an axe, in order. */
export const STEPS_DRAWN = ['block', 'roughout', 'preform', 'grinding', 'haft', 'hafted-axe'] as const;
export type StepDrawn = (typeof STEPS_DRAWN)[number];

const AXE: FindToDraw = {
  id: 'step',
  objectType: 'polished-axe',
  material: 'flint',
  state: 'whole',
  lengthMm: 150,
  widthMm: 62,
  thicknessMm: 32,
  count: 1,
};

interface Glyph {
  readonly markup: string;
  readonly box: readonly [x: number, y: number, width: number, height: number];
}

/** A picture of one step of making a ground axe, at the scale of a thing 150 mm long. Nobody is shown at work. */
export function drawStep(step: StepDrawn): Drawing {
  const hand = handOf(derive(stream('drawing'), `step-${step}`));
  const glyph = GLYPHS[step](hand);
  const [x, y, width, height] = glyph.box;
  const pad = Math.max(width, height) * 0.05;
  return {
    markup: inked(glyph.markup),
    viewBox: { x: x - pad, y: y - pad, width: width + 2 * pad, height: height + 2 * pad },
  };
}

const GLYPHS: { readonly [Step in StepDrawn]: (hand: Hand) => Glyph } = {
  block,
  roughout: (hand) => ({
    markup: faceMarkup('axe-roughout', hand, { lengthMm: 165, widthMm: 76 }),
    box: [0, 0, 76, 165],
  }),
  preform,
  grinding,
  haft: (hand) => ({ markup: haft(hand, true), box: [0, 0, 130, 430] }),
  'hafted-axe': haftedAxe,
};

function faceMarkup(objectType: string, hand: Hand, size: Partial<FindToDraw> = {}): string {
  const drawer = DRAWERS.get(objectType);
  if (drawer === undefined) throw new RangeError(`no drawer for ${objectType}`);
  return markup(drawer({ find: { ...AXE, objectType, ...size }, hand, isSmall: true }).face.marks);
}

function block(hand: Hand): Glyph {
  const curve = lump(150, 190, hand, 2.7, 0.09, 10);
  const scar = closedCurve(
    [
      [34, 40],
      [84, 24],
      [104, 70],
      [78, 112],
      [42, 92],
    ].map(([x = 0, y = 0]) => ({ at: [x, y], corner: false })),
  );
  const inScar = (place: Point): boolean =>
    scar.points.some(([x, y]) => Math.hypot(x - place[0], y - place[1]) < 9) ||
    (place[0] > 40 && place[0] < 98 && place[1] > 34 && place[1] < 104);
  const marks: Mark[] = [
    { ink: 'outline', path: curve.path },
    {
      ink: 'stipple',
      path: stipple(curve.points, 13, hand, (place) => (inScar(place) ? 0 : 0.7)),
      part: 'cortex',
    },
    { ink: 'ridge', path: scar.path },
    ...ripples(scar.points, [70, 14], 6, 0.7, hand, 1),
  ];
  return { markup: markup(marks), box: [0, 0, 150, 190] };
}

const PREFORM = mirrored([
  [0, 0],
  [0.3, 0.03],
  [0.48, 0.1],
  [0.49, 0.4],
  [0.42, 0.75],
  [0.28, 0.95],
  [0, 1],
]);

function preform(hand: Hand): Glyph {
  const curve = outline(PREFORM, 66, 155, hand, 0.015);
  const marks: Mark[] = [
    { ink: 'outline', path: curve.path },
    ...facets(curve, 66, 155, hand, { count: 8, ripples: 2, from: 0.03, to: 0.97, lean: 0.25 }),
  ];
  return { markup: markup(marks), box: [0, 0, 66, 155] };
}

const SLAB: readonly Row[] = [
  [-0.5, 0.1, 'corner'],
  [0.46, 0, 'corner'],
  [0.5, 0.7],
  [0.4, 1, 'corner'],
  [0.14, 0.86],
  [-0.16, 0.86],
  [-0.44, 1, 'corner'],
];

/** A slab with a hollow, an axe head laid flat on it, and which way it is pushed. */
function grinding(hand: Hand): Glyph {
  const slab = outline(SLAB, 300, 96, hand, 0.01, ([x, y]) => [x, y + 104]);
  const axe = faceMarkup('polished-axe', hand, { lengthMm: 140, widthMm: 58 });
  const arrow = (x: number, way: 1 | -1): string =>
    linePath([
      [x, 18],
      [x + way * 52, 18],
    ]) +
    linePath([
      [x + way * 40, 9],
      [x + way * 52, 18],
      [x + way * 40, 27],
    ]);
  const drops = [54, 244]
    .map(
      (x) =>
        openCurve([
          [x, 84],
          [x - 5, 95],
          [x, 101],
          [x + 5, 95],
          [x, 84],
        ]).path,
    )
    .join('');
  const marks: Mark[] = [
    { ink: 'outline', path: slab.path },
    { ink: 'stipple', path: stipple(slab.points, 13, hand, ([, y]) => (y > 136 ? 0.5 : 0)) },
    { ink: 'scratch', path: strokes(slab.points, 50, 0, 50, hand, ([, y]) => y < 134) },
    { ink: 'line', path: arrow(162, 1) + arrow(138, -1), part: 'motion' },
    { ink: 'retouch', path: drops, part: 'water' },
  ];
  return {
    markup: `${markup(marks)}<g transform="translate(80 112) rotate(-90)">${axe}</g>`,
    box: [0, 0, 300, 200],
  };
}

const HAFT: readonly Row[] = [
  [-0.18, 0.02],
  [0.16, 0],
  [0.2, 0.06],
  [0.12, 0.12],
  [0.13, 0.5],
  [0.2, 0.68],
  [0.42, 0.77],
  [0.5, 0.86],
  [0.36, 0.97],
  [0, 1],
  [-0.36, 0.97],
  [-0.5, 0.86],
  [-0.42, 0.76],
  [-0.2, 0.66],
  [-0.12, 0.5],
  [-0.13, 0.12],
  [-0.22, 0.06],
];

/** A wooden handle that swells to its head, with a slot for the axe. */
function haft(hand: Hand, isEmpty: boolean): string {
  const curve = outline(HAFT, 130, 430, hand, 0.006);
  const marks: Mark[] = [
    { ink: 'outline', path: curve.path },
    { ink: 'scratch', path: strokes(curve.points, 60, Math.PI / 2, 80, hand, ([, y]) => y > 170) },
    { ink: 'scratch', path: strokes(curve.points, 16, Math.PI / 2, 40, hand, ([, y]) => y < 60) },
  ];
  if (isEmpty) marks.push({ ink: 'fill', path: circlePath([65, 76], 24, 30), part: 'slot' });
  return markup(marks);
}

/** The head goes through the slot, its edge to the left and its butt just showing at the right. */
function haftedAxe(hand: Hand): Glyph {
  const axe = faceMarkup('polished-axe', hand, { lengthMm: 300, widthMm: 92 });
  const head = `<g transform="translate(195 30) rotate(90)">${axe}</g>`;
  return { markup: `${head}${haft(hand, false)}`, box: [-105, 0, 300, 430] };
}
