import type { Mark } from '../mark.ts';
import { flipped, outline, type Row } from '../outline.ts';
import type { Point } from '../point.ts';
import { area, middle, split, type Region } from '../region.ts';
import { ripples, shadeAt } from '../scar.ts';
import { sectionView } from '../section.ts';
import type { Drawer, Sketch } from '../sketch.ts';
import { stipple } from '../texture.ts';
import { crazing } from './burnt-flint.ts';
import { faceOf } from './views.ts';

const CORE: readonly Row[] = [
  [-0.44, 0.88, 'corner'],
  [-0.5, 0.62],
  [-0.42, 0.3],
  [-0.26, 0.06],
  [0.04, 0],
  [0.34, 0.12],
  [0.48, 0.42],
  [0.5, 0.7],
  [0.42, 0.9, 'corner'],
  [0.1, 1],
  [-0.2, 0.99],
];

/** A block with a flat platform at its top, from which hollow scars run down; chalky skin is left at one side. */
export const core: Drawer = (sketch) => {
  const { find, hand, isSmall } = sketch;
  const [width, height] = [find.widthMm, find.lengthMm];
  const curve = outline(hand.happens(0.5) ? CORE : flipped(CORE), width, height, hand, 0.04);
  const lip = split(curve.points, [
    [width * 0.06, height * 0.12],
    [width * 0.3, height * 0.22],
    [width * 0.62, height * 0.21],
    [width * 0.92, height * 0.1],
  ]);
  const [one, two] = lip.sides;
  const [platform, body] = area(one) < area(two) ? [one, two] : [two, one];
  const { scars, skin, marks } = columns(body, width, height, sketch);
  const gap = Math.max(width, height) * (isSmall ? 0.06 : 0.052);
  return {
    face: faceOf(curve, width, height, [
      { ink: 'line', path: lip.path, part: 'platform' },
      ...marks,
      ...ripples(platform, [width * 0.2, 0], isSmall ? 2 : 4, 0.4, hand, height * 0.005).map((mark) => ({
        ...mark,
        part: 'platform',
      })),
      ...scars.flatMap((scar) => down(scar, width, height, sketch)),
      { ink: 'stipple', path: stipple(skin, gap, hand, () => 0.75), part: 'cortex' },
      ...(find.state === 'burnt' ? crazing(body, 4, hand) : []),
    ]),
    more: () => [sectionView('oval', width, find.thicknessMm, hand, find)],
    cutAtMm: height * 0.5,
  };
};

function columns(
  body: Region,
  width: number,
  height: number,
  { hand }: Sketch,
): { scars: Region[]; skin: Region; marks: Mark[] } {
  const scars: Region[] = [];
  const marks: Mark[] = [];
  let rest = body;
  for (const part of [0.29, 0.55, 0.79]) {
    const x = (part + hand.wobble(0.035)) * width;
    const parted = split(rest, [
      [x, height * 0.18],
      [x + width * hand.wobble(0.03), height * 0.5],
      [x + width * (0.5 - part) * 0.45, height],
    ]);
    const [one, two] = parted.sides;
    const isOneLeft = middle(one)[0] < middle(two)[0];
    scars.push(isOneLeft ? one : two);
    rest = isOneLeft ? two : one;
    marks.push({ ink: 'ridge', path: parted.path, part: 'ridge' });
  }
  return { scars, skin: rest, marks };
}

function down(scar: Region, width: number, height: number, { hand, isSmall }: Sketch): Mark[] {
  const heart = middle(scar);
  const blow: Point = [heart[0] * 0.8 + width * 0.1, height * 0.1];
  const shade = Math.max(0.4, shadeAt(heart, width, height));
  return ripples(scar, blow, isSmall ? 4 : 6, shade, hand, height * 0.006);
}
