import { breakOff } from '../break-off.ts';
import type { Curve } from '../curve.ts';
import { crazing } from './burnt-flint.ts';
import type { Hand } from '../hand.ts';
import type { Mark } from '../mark.ts';
import { flipped, outline, type Row } from '../outline.ts';
import { circlePath } from '../path.ts';
import { around, type Point } from '../point.ts';
import { sectionView } from '../section.ts';
import type { Drawer, Sketch, Sketched, View } from '../sketch.ts';
import { retouch, sideView, struckFace, underside, type Ridge } from './struck.ts';
import { faceOf } from './views.ts';

const FLAKE: readonly Row[] = [
  [-0.18, 0, 'corner'],
  [0.18, 0, 'corner'],
  [0.4, 0.22],
  [0.5, 0.55],
  [0.34, 0.88],
  [0.02, 1],
  [-0.28, 0.94],
  [-0.5, 0.6],
  [-0.38, 0.2],
];

const SCRAPER: readonly Row[] = [
  [-0.15, 0, 'corner'],
  [0.15, 0, 'corner'],
  [0.36, 0.28],
  [0.5, 0.66],
  [0.36, 0.93],
  [0, 1],
  [-0.36, 0.93],
  [-0.5, 0.66],
  [-0.36, 0.28],
];

// Ridges as they meet on struck flakes: in a Y, side by side, or one across another. Unit box, y down.
const PATTERNS: readonly (readonly Ridge[])[] = [
  [
    {
      line: [
        [0.3, 0],
        [0.5, 0.45],
        [0.56, 1],
      ],
    },
    {
      line: [
        [0.52, 0.48],
        [0.75, 0.32],
        [1, 0.3],
      ],
    },
  ],
  [
    {
      line: [
        [0.34, 0],
        [0.38, 0.5],
        [0.42, 1],
      ],
    },
    {
      line: [
        [0.72, 0.05],
        [0.64, 0.5],
        [0.58, 1],
      ],
    },
    {
      line: [
        [0.66, 0.45],
        [0.8, 0.5],
        [1, 0.42],
      ],
    },
  ],
  [
    {
      line: [
        [0, 0.38],
        [0.45, 0.42],
        [0.95, 0.62],
      ],
    },
    {
      line: [
        [0.48, 0.42],
        [0.58, 0.2],
        [0.62, 0],
      ],
    },
    {
      line: [
        [0.4, 0.42],
        [0.46, 0.7],
        [0.46, 1],
      ],
    },
  ],
];

export const flake: Drawer = (sketch) => struck(sketch, FLAKE, 0.05, []);

export const endScraper: Drawer = (sketch) => {
  const drawn = struck(sketch, SCRAPER, 0.02, ['scraper']);
  return drawn;
};

function struck(
  sketch: Sketch,
  rows: readonly Row[],
  wobble: number,
  marksOf: readonly 'scraper'[],
): Sketched {
  const { find, hand, isSmall } = sketch;
  const [width, height] = [find.widthMm, find.lengthMm];
  const whole = outline(hand.happens(0.5) ? rows : flipped(rows), width, height, hand, wobble);
  const isScraper = marksOf.includes('scraper');
  const curve =
    find.state === 'broken' && !isScraper
      ? breakOff(whole, width, height, -Math.PI / 2 + hand.wobble(0.3), 0.24, hand)
      : whole;
  const pattern = around(PATTERNS, Math.floor(hand.within(0, PATTERNS.length)));
  const face = struckFace(
    curve.points,
    pattern,
    width,
    height,
    hand,
    isSmall ? 0.5 : find.state === 'whole' ? 0.74 : 0.63,
  );
  const extra = isScraper ? front(curve, width, height, sketch) : [];
  return {
    face: faceOf(curve, width, height, [
      ...face.marks,
      ...extra,
      ...(find.state === 'burnt' ? crazing(curve.points, 4, hand) : []),
      struckHere(width, height),
    ]),
    more: () => [
      sideView(find.thicknessMm, height, hand),
      ...(isScraper ? [] : [back(curve, width, height, hand)]),
      sectionView(isScraper ? 'dome' : 'triangle', width, find.thicknessMm, hand, find),
    ],
    cutAtMm: height * 0.5,
  };
}

const back = (curve: Curve, width: number, height: number, hand: Hand): View => ({
  part: 'back',
  widthMm: width,
  heightMm: height,
  marks: [{ ink: 'outline', path: curve.mirrored(width) }, ...underside(curve, width, height, hand)],
});

/** The dot that says a platform is there and the blow fell here. */
export const struckHere = (width: number, height: number): Mark => ({
  ink: 'fill',
  path: circlePath([width / 2, height + Math.max(width, height) * 0.032], Math.max(width, height) * 0.013),
  part: 'platform-mark',
});

function front(curve: Curve, width: number, height: number, sketch: Sketch): Mark[] {
  const edge = curve.points
    .filter(([, y]) => y < height * 0.42)
    .sort((a, b) => turn(a, width, height) - turn(b, width, height));
  const pitch = (width + height) * (sketch.isSmall ? 0.085 : 0.06);
  return retouch(edge, [width / 2, height * 0.55], 0.3, pitch, sketch.hand);
}

const turn = ([x, y]: Point, width: number, height: number): number =>
  Math.atan2(x - width / 2, height * 0.5 - y);
