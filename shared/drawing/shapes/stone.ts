import { openCurve, type Curve } from '../curve.ts';
import type { Hand } from '../hand.ts';
import type { Mark } from '../mark.ts';
import { lump, outline, type Row } from '../outline.ts';
import { circlePath, linePath } from '../path.ts';
import { around, away, between, type Point } from '../point.ts';
import { area, isInside, middle, split, type Region } from '../region.ts';
import { ripples, shadeAt } from '../scar.ts';
import { cut, sectionView } from '../section.ts';
import type { Drawer, Sketch, Sketched, View } from '../sketch.ts';
import { stipple, strokes } from '../texture.ts';
import { jagged } from './struck.ts';

const faceOf = (curve: Curve, width: number, height: number, marks: readonly Mark[]): View => ({
  part: 'face',
  widthMm: width,
  heightMm: height,
  marks: [{ ink: 'outline', path: curve.path, part: 'outline' }, ...marks],
});

function edgeOf({ find, hand }: Sketch, n = 2.2): View {
  const curve = lump(find.thicknessMm, find.lengthMm, hand, n, 0.02);
  return {
    part: 'edge',
    widthMm: find.thicknessMm,
    heightMm: find.lengthMm,
    marks: [{ ink: 'outline', path: curve.path }],
  };
}

export const hammerstone: Drawer = (sketch) => {
  const { find, hand, isSmall } = sketch;
  const [width, height] = [find.widthMm, find.lengthMm];
  const curve = lump(width, height, hand, 2.3, 0.02);
  const gap = Math.max(width, height) * (isSmall ? 0.055 : 0.04);
  let pecks = '';
  for (let y = gap / 2; y < height; y += gap) {
    for (let x = gap / 2; x < width; x += gap) {
      const place: Point = [x + hand.wobble(gap * 0.4), y + hand.wobble(gap * 0.4)];
      const isEnd = Math.abs(place[1] / height - 0.5) > 0.3 + 0.05 * Math.cos(place[0]);
      if (!isEnd || !isInside(curve.points, place)) continue;
      const size = gap * hand.within(0.25, 0.45);
      const tilt = hand.wobble(0.6);
      pecks += linePath([
        away(place, Math.PI * 1.25 + tilt, size),
        place,
        away(place, -Math.PI * 0.25 + tilt, size),
      ]);
    }
  }
  const shade = stipple(curve.points, gap * 1.5, hand, ([x, y]) =>
    Math.abs(y / height - 0.5) > 0.3 ? 0 : Math.max(0, (x / width - 0.55) * 1.6),
  );
  return {
    face: faceOf(curve, width, height, [
      { ink: 'retouch', path: pecks, part: 'pecked' },
      { ink: 'stipple', path: shade },
    ]),
    more: () => [edgeOf(sketch), sectionView('oval', width, find.thicknessMm, hand)],
    cutAtMm: height * 0.5,
  };
};

export const naturalPebble: Drawer = (sketch) => {
  const { find, hand } = sketch;
  const [width, height] = [find.widthMm, find.lengthMm];
  const curve = lump(width, height, hand, 2.1, 0.035, 9);
  const heart: Point = [width / 2, height / 2];
  const arc = (part: number, from: number, to: number): string => {
    const points: Point[] = [];
    for (let step = 0; step <= 6; step += 1) {
      const angle = from + ((to - from) * step) / 6;
      points.push([
        heart[0] + Math.cos(angle) * width * 0.5 * part,
        heart[1] + Math.sin(angle) * height * 0.5 * part,
      ]);
    }
    return openCurve(points).path;
  };
  return {
    face: faceOf(curve, width, height, [
      { ink: 'scratch', path: arc(0.84, 0.05, 1.5) + arc(0.68, 0.4, 1.2) },
    ]),
    more: () => [edgeOf(sketch), sectionView('oval', width, find.thicknessMm, hand)],
    cutAtMm: height * 0.5,
  };
};

const CORE: readonly Row[] = [
  [-0.42, 0.9, 'corner'],
  [-0.5, 0.62],
  [-0.42, 0.3],
  [-0.26, 0.06],
  [0.04, 0],
  [0.34, 0.12],
  [0.48, 0.42],
  [0.5, 0.7],
  [0.4, 0.92, 'corner'],
  [0.1, 1],
  [-0.2, 0.99],
];

export const core: Drawer = (sketch) => {
  const { find, hand, isSmall } = sketch;
  const [width, height] = [find.widthMm, find.lengthMm];
  const curve = outline(CORE, width, height, hand, 0.025);
  const lip = split(curve.points, [
    [width * 0.06, height * 0.1],
    [width * 0.3, height * 0.2],
    [width * 0.62, height * 0.19],
    [width * 0.92, height * 0.08],
  ]);
  const body = lip.sides.reduce((most, side) => (area(side) > area(most) ? side : most));
  const marks: Mark[] = [{ ink: 'line', path: lip.path, part: 'platform' }];
  let rest: Region = body;
  const scars: Region[] = [];
  const cuts = [0.3, 0.56, 0.79];
  for (const part of cuts) {
    const x = (part + hand.wobble(0.03)) * width;
    const parted = split(rest, [
      [x, height * 0.18],
      [x + width * hand.wobble(0.03), height * 0.5],
      [x + width * (0.5 - part) * 0.45, height],
    ]);
    const [one, two] = parted.sides;
    const [left, right] = middle(one)[0] < middle(two)[0] ? [one, two] : [two, one];
    scars.push(left);
    rest = right;
    marks.push({ ink: 'ridge', path: parted.path, part: 'ridge' });
  }
  for (const scar of scars) {
    const heart = middle(scar);
    const blow: Point = [heart[0] * 0.8 + width * 0.1, height * 0.1];
    const shade = Math.max(0.35, shadeAt(heart, width, height));
    marks.push(...ripples(scar, blow, isSmall ? 4 : 8, shade, hand, height * 0.006));
  }
  const gap = Math.max(width, height) * (isSmall ? 0.06 : 0.04);
  marks.push({ ink: 'stipple', path: stipple(rest, gap, hand, () => 0.75), part: 'cortex' });
  return {
    face: faceOf(curve, width, height, marks),
    more: () => [edgeOf(sketch, 2.6), sectionView('oval', width, find.thicknessMm, hand)],
    cutAtMm: height * 0.5,
  };
};

export const burntFlint: Drawer = (sketch) => {
  const { find, hand, isSmall } = sketch;
  const [width, height] = [find.widthMm, find.lengthMm];
  const curve = lump(width, height, hand, 2.8, 0.07, 9);
  return {
    face: faceOf(curve, width, height, [
      ...crazing(curve.points, isSmall ? 9 : 15, hand),
      ...potLids(width, height, hand),
    ]),
    more: () => [edgeOf(sketch, 2.8), sectionView('oval', width, find.thicknessMm, hand)],
    cutAtMm: height * 0.5,
  };
};

/** Cracks that close into small many-sided fields, as flint cracks in a fire. */
export function crazing(face: Region, count: number, hand: Hand): Mark[] {
  const cells: Region[] = [face];
  const marks: Mark[] = [];
  for (let index = 0; index < count; index += 1) {
    cells.sort((a, b) => area(b) - area(a));
    const cell = cells.shift();
    if (cell === undefined) break;
    const heart = middle(cell);
    const turn = hand.within(0, Math.PI);
    const reach = Math.sqrt(area(cell));
    const sway = reach * 0.12;
    const bend: Point = [heart[0] + hand.wobble(sway), heart[1] + hand.wobble(sway)];
    const parted = split(cell, [away(heart, turn, reach), bend, away(heart, turn + Math.PI, reach)]);
    if (Math.min(area(parted.sides[0]), area(parted.sides[1])) < area(cell) * 0.15) {
      cells.push(cell);
      continue;
    }
    cells.push(...parted.sides);
    const points = parted.points;
    marks.push({
      ink: 'retouch',
      path: linePath([around(points, 0), bend, around(points, -1)]),
      part: 'crazing',
    });
  }
  return marks;
}

function potLids(width: number, height: number, hand: Hand): Mark[] {
  const size = Math.min(width, height) * 0.09;
  const places: Point[] = [
    [width * 0.36, height * 0.34],
    [width * 0.6, height * 0.66],
  ];
  return places.map((place) => {
    const at: Point = [place[0] + hand.wobble(width * 0.06), place[1] + hand.wobble(height * 0.06)];
    return {
      ink: 'open',
      path: circlePath(at, size, size * 0.85) + circlePath(at, size * 0.5, size * 0.4),
      part: 'pot-lid',
    };
  });
}

const SLAB: readonly Row[] = [
  [-0.46, 0.06, 'corner'],
  [0.44, 0.0, 'corner'],
  [0.5, 0.5],
  [0.34, 0.86],
  [-0.02, 1],
  [-0.36, 0.9],
  [-0.5, 0.6, 'corner'],
];

export const polishingStoneFragment: Drawer = (sketch) => slab(sketch, false);
export const quernFragment: Drawer = (sketch) => slab(sketch, true);

function slab(sketch: Sketch, isQuern: boolean): Sketched {
  const { find, hand, isSmall } = sketch;
  const [width, height] = [find.widthMm, find.lengthMm];
  const curve = outline(SLAB, width, height, hand, 0.02);
  const rim = openCurve([
    [width * 0.12, height * 0.3],
    [width * 0.3, height * 0.17],
    [width * 0.55, height * 0.14],
    [width * 0.78, height * 0.26],
    [width * 0.88, height * 0.55],
    [width * 0.86, height * 0.98],
  ]);
  const worn: Region = [...rim.points, [width * 0.06, height * 0.92]];
  const gap = Math.max(width, height) * (isSmall ? 0.065 : 0.042);
  const skin = stipple(curve.points, gap, hand, (place) =>
    isInside(worn, place) ? (isQuern ? 0.22 : 0) : 0.7,
  );
  const count = isSmall ? 24 : 70;
  return {
    face: faceOf(curve, width, height, [
      { ink: 'ridge', path: rim.path, part: 'dish' },
      { ink: 'stipple', path: skin, part: 'skin' },
      {
        ink: 'scratch',
        path: strokes(
          worn,
          isQuern ? count / 2 : count * 2,
          isQuern ? 0.15 : Math.PI * 0.42,
          height * (isQuern ? 0.14 : 0.3),
          hand,
        ),
        part: 'ground',
      },
    ]),
    more: () => [dished(find.thicknessMm, height, hand)],
    cutAtMm: height * 0.55,
  };
}

/** A long section of a slab, standing up, whose worked face is hollowed. */
function dished(thickness: number, height: number, hand: Hand): View {
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
  return { part: 'section', widthMm: thickness, heightMm: height, marks: cut(curve, thickness, height) };
}

export const chalkDisc: Drawer = (sketch) => {
  const { find, hand } = sketch;
  const [width, height] = [find.widthMm, find.lengthMm];
  const curve = lump(width, height, hand, 2.05, 0.02, 11);
  return {
    face: faceOf(curve, width, height, chalkMarks(curve, width, height, sketch)),
    more: () => [edgeOf(sketch, 3.4), sectionView('block', width, find.thicknessMm, hand)],
    cutAtMm: height * 0.5,
  };
};

const BLOCK: readonly Row[] = [
  [-0.44, 0.03],
  [0.44, 0],
  [0.5, 0.1],
  [0.47, 0.9],
  [0.4, 1],
  [-0.42, 0.98],
  [-0.5, 0.88],
  [-0.48, 0.12],
];

export const chalkBlock: Drawer = (sketch) => {
  const { find, hand } = sketch;
  const [width, height] = [find.widthMm, find.lengthMm];
  const curve = outline(BLOCK, width, height, hand, 0.015);
  return {
    face: faceOf(curve, width, height, chalkMarks(curve, width, height, sketch)),
    more: () => [edgeOf(sketch, 4), sectionView('block', width, find.thicknessMm, hand)],
    cutAtMm: height * 0.5,
  };
};

function chalkMarks(curve: Curve, width: number, height: number, { find, hand, isSmall }: Sketch): Mark[] {
  const rim = stipple(curve.points, Math.max(width, height) * (isSmall ? 0.075 : 0.055), hand, ([x, y]) => {
    const reach = Math.hypot(x / width - 0.5, y / height - 0.5) * 2;
    return reach > 0.8 && x / width + y / height > 1.05 ? 0.8 : 0.06;
  });
  const marks: Mark[] = [{ ink: 'stipple', path: rim }];
  if (find.decoration === 'plain') return marks;
  const gap = Math.min(width, height) * 0.16;
  let lines = '';
  for (const [slope, offset] of [
    [0.55, -2],
    [0.55, -1],
    [0.55, 0],
    [0.55, 1],
    [-0.75, -1.4],
    [-0.75, -0.3],
    [-0.75, 0.9],
  ] as const) {
    const heart: Point = [width / 2, height / 2 + offset * gap];
    const reach = width * hand.within(0.26, 0.34);
    lines += linePath([
      [heart[0] - reach, heart[1] - reach * slope + hand.wobble(gap * 0.2)],
      between(
        [heart[0] - reach, heart[1] - reach * slope],
        [heart[0] + reach, heart[1] + reach * slope],
        0.5 + hand.wobble(0.1),
      ),
      [heart[0] + reach, heart[1] + reach * slope + hand.wobble(gap * 0.2)],
    ]);
  }
  return [...marks, { ink: 'retouch', path: lines, part: 'scratches' }];
}

/** A break's jagged face, used by lumps of many kinds. */
export const breakLine = (from: Point, to: Point, size: number, hand: Hand): string =>
  linePath(jagged(from, to, 7, size, hand));
