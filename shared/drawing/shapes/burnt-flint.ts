import { boxOf } from '../curve.ts';
import type { Hand } from '../hand.ts';
import type { Mark } from '../mark.ts';
import { lump } from '../outline.ts';
import { circlePath } from '../path.ts';
import { apart, around, away, type Point } from '../point.ts';
import { area, insideParts, isInside, middle, split, type Region } from '../region.ts';
import { sectionView } from '../section.ts';
import type { Drawer } from '../sketch.ts';
import { faceOf } from './views.ts';

/** A lump cracked all over by fire, with small round flakes jumped off. */
export const burntFlint: Drawer = (sketch) => {
  const { find, hand, isSmall } = sketch;
  const [width, height] = [find.widthMm, find.lengthMm];
  const curve = lump(width, height, hand, 2.6, 0.09, 10);
  return {
    face: faceOf(curve, width, height, [
      ...crazing(curve.points, isSmall ? 15 : 26, hand),
      ...potLids(width, height, hand),
    ]),
    more: () => [sectionView('oval', width, find.thicknessMm, hand, find)],
    cutAtMm: height * 0.5,
  };
};

/** Cracks that close into small many-sided fields, as flint cracks in a fire. */
export function crazing(face: Region, count: number, hand: Hand): Mark[] {
  const cells: Region[] = [face];
  let path = '';
  for (let index = 0; index < count; index += 1) {
    cells.sort((a, b) => area(b) - area(a));
    const cell = cells.shift();
    if (cell === undefined) break;
    const parted = crack(cell, hand);
    path += parted.path;
    cells.push(...parted.sides);
  }
  return [{ ink: 'retouch', path, part: 'crazing' }];
}

/** A field cracked across its longer way, with a kink. */
function crack(cell: Region, hand: Hand): ReturnType<typeof split> {
  const heart = middle(cell);
  const box = boxOf(cell);
  const turn = (box.width > box.height ? Math.PI / 2 : 0) + hand.wobble(0.5);
  const reach = box.width + box.height;
  const chords = insideParts(cell, away(heart, turn, -reach), away(heart, turn, reach));
  const [from, to] = chords.reduce(
    (most, chord) => (apart(...chord) > apart(...most) ? chord : most),
    chords[0] ?? [around(cell, 0), around(cell, 1)],
  );
  const sway = apart(from, to) * 0.13;
  const kink = (part: number): Point => {
    const place: Point = [
      from[0] + (to[0] - from[0]) * part + hand.wobble(sway),
      from[1] + (to[1] - from[1]) * part + hand.wobble(sway),
    ];
    return isInside(cell, place)
      ? place
      : [from[0] + (to[0] - from[0]) * part, from[1] + (to[1] - from[1]) * part];
  };
  return split(withPoint(withPoint(cell, from), to), [from, kink(0.34), kink(0.66), to], true);
}

/** A region with one more point on its edge, where it lies nearest. */
function withPoint(region: Region, place: Point): Region {
  let [best, least] = [0, Infinity];
  for (const [index, point] of region.entries()) {
    const after = around(region, index + 1);
    const detour = apart(point, place) + apart(place, after) - apart(point, after);
    if (detour < least) [best, least] = [index, detour];
  }
  return [...region.slice(0, best + 1), place, ...region.slice(best + 1)];
}

function potLids(width: number, height: number, hand: Hand): Mark[] {
  const size = Math.min(width, height) * 0.1;
  const places: readonly Point[] = [
    [width * 0.34, height * 0.3],
    [width * 0.62, height * 0.68],
  ];
  return places.map((place) => {
    const at: Point = [place[0] + hand.wobble(width * 0.06), place[1] + hand.wobble(height * 0.06)];
    return {
      ink: 'open',
      path: circlePath(at, size, size * 0.85) + circlePath(at, size * 0.45, size * 0.38),
      part: 'pot-lid',
    };
  });
}
