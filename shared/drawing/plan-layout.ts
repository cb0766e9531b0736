import { shuffle, type Stream } from '../chance/index.ts';
import { handOf, type Hand } from './hand.ts';
import { apart, around, type Point } from './point.ts';

/** A thing to be laid down: its drawn box in mm before it is enlarged. */
export interface Footprint {
  readonly id: string;
  readonly widthMm: number;
  readonly heightMm: number;
}

/** The floor finds may lie on: an ellipse. */
export interface Floor {
  readonly centre: Point;
  readonly radiusXMm: number;
  readonly radiusYMm: number;
}

export interface Laid {
  readonly id: string;
  readonly at: Point;
  readonly turnDegrees: number;
  readonly enlarged: number;
  /** The corners of its turned box. */
  readonly corners: readonly Point[];
  readonly tag: Point;
}

/** The corners of a box turned about its middle. */
function cornersOf(at: Point, widthMm: number, heightMm: number, turnDegrees: number): Point[] {
  const turn = (turnDegrees * Math.PI) / 180;
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  const [halfX, halfY] = [widthMm / 2, heightMm / 2];
  return [
    [-halfX, -halfY],
    [halfX, -halfY],
    [halfX, halfY],
    [-halfX, halfY],
  ].map(([x = 0, y = 0]): Point => [at[0] + x * cos - y * sin, at[1] + x * sin + y * cos]);
}

/** An equal-sided triangle, point up, about its middle. */
export const triangleOf = (at: Point, sideMm: number): Point[] => [
  [at[0], at[1] - sideMm * 0.577],
  [at[0] + sideMm / 2, at[1] + sideMm * 0.289],
  [at[0] - sideMm / 2, at[1] + sideMm * 0.289],
];

/** Whether two areas without hollows touch: no line parts them. Source: separating axes, Gottschalk, Lin & Manocha 1996. */
export function touch(one: readonly Point[], two: readonly Point[]): boolean {
  return !isParted(one, two) && !isParted(two, one);
}

function isParted(one: readonly Point[], two: readonly Point[]): boolean {
  for (const [index, point] of one.entries()) {
    const after = around(one, index + 1);
    const [nx, ny] = [after[1] - point[1], point[0] - after[0]];
    const reach = (points: readonly Point[]): [number, number] => {
      let [low, high] = [Infinity, -Infinity];
      for (const [x, y] of points) {
        const along = x * nx + y * ny;
        low = Math.min(low, along);
        high = Math.max(high, along);
      }
      return [low, high];
    };
    const [lowOne, highOne] = reach(one);
    const [lowTwo, highTwo] = reach(two);
    if (highOne <= lowTwo || highTwo <= lowOne) return true;
  }
  return false;
}

const isOnFloor = (floor: Floor, [x, y]: Point): boolean =>
  ((x - floor.centre[0]) / floor.radiusXMm) ** 2 + ((y - floor.centre[1]) / floor.radiusYMm) ** 2 <= 1;

/** What was laid, and how large its numbers' triangles could be. */
export interface Layout {
  readonly laid: readonly Laid[];
  readonly tagSideMm: number;
}

/** Tries at a layout before the finds are drawn smaller. */
const TRIES = 8;
/** In a crowded pit numbers are drawn smaller and presses stand closer: parts of what was asked. */
const EASES = [1, 0.85, 0.7, 0.55, 0.4, 0.25] as const;

/**
 * Lays finds on a floor so that none touches another, and each has a triangle beside it that touches
 * nothing. Where there is no room the finds are drawn smaller, never below the plan's own scale; where that
 * is not enough, the numbers too.
 *
 * @throws RangeError when the finds do not fit on the floor at all.
 */
export function layOut(
  things: readonly Footprint[],
  floor: Floor,
  tagSideMm: number,
  pressMm: number,
  chance: Stream,
): Layout {
  const hand = handOf(chance);
  const largestFirst = [...things].sort((a, b) => longOf(b) - longOf(a) || a.id.localeCompare(b.id, 'en'));
  for (const ease of EASES) {
    for (let size = 1; size > 0.4; size *= 0.9) {
      for (let attempt = 0; attempt < TRIES; attempt += 1) {
        const laid = layFinds(largestFirst, floor, size, pressMm * ease, hand);
        if (laid === null) continue;
        const tagged = layTags(laid, floor, tagSideMm * ease, pressMm, chance);
        if (tagged !== null) return { laid: tagged, tagSideMm: tagSideMm * ease };
      }
    }
  }
  throw new RangeError(
    `${things.length} finds do not fit in a pit ${Math.round(floor.radiusXMm * 2)} mm across`,
  );
}

const longOf = (thing: Footprint): number => Math.max(thing.widthMm, thing.heightMm);

/** How many times larger than the plan a thing is drawn: small things more than large ones. */
function enlargement(thing: Footprint, cellMm: number, size: number): number {
  const long = longOf(thing);
  const slim = Math.min(thing.widthMm, thing.heightMm) / long;
  const most = cellMm * (slim < 0.4 ? 1.05 : 0.76);
  const least = cellMm * 0.54;
  return Math.max(1, (Math.min(most, Math.max(least, long * 1.7)) * size) / long);
}

function layFinds(
  things: readonly Footprint[],
  floor: Floor,
  size: number,
  pressMm: number,
  hand: Hand,
): Laid[] | null {
  const cellMm = Math.sqrt((Math.PI * floor.radiusXMm * floor.radiusYMm) / things.length);
  const laid: Laid[] = [];
  for (const thing of things) {
    const enlarged = enlargement(thing, cellMm, size);
    const place = bestPlace(thing, enlarged, laid, floor, pressMm, hand);
    if (place === null) return null;
    laid.push(place);
  }
  return laid;
}

function bestPlace(
  thing: Footprint,
  enlarged: number,
  laid: readonly Laid[],
  floor: Floor,
  pressMm: number,
  hand: Hand,
): Laid | null {
  let [best, most]: [Laid | null, number] = [null, -Infinity];
  const [width, height] = [thing.widthMm * enlarged, thing.heightMm * enlarged];
  for (let tries = 0; tries < 60; tries += 1) {
    const turn = hand.within(0, Math.PI * 2);
    const reach = Math.sqrt(hand.within(0, 1));
    const at: Point = [
      floor.centre[0] + Math.cos(turn) * reach * floor.radiusXMm,
      floor.centre[1] + Math.sin(turn) * reach * floor.radiusYMm,
    ];
    const turnDegrees = Math.round(hand.wobble(70));
    const nearest = laid.reduce((near, other) => Math.min(near, apart(other.at, at)), Infinity);
    if (nearest < pressMm) continue;
    // Room is wanted evenly: far from others, a little less far from the wall.
    const score = Math.min(nearest, floor.radiusXMm * (1.6 - reach));
    if (score <= most) continue;
    const corners = cornersOf(at, width, height, turnDegrees);
    if (!corners.every((corner) => isOnFloor(floor, corner))) continue;
    const wide = cornersOf(at, width * 1.08 + 6, height * 1.08 + 6, turnDegrees);
    if (laid.some((other) => touch(other.corners, wide))) continue;
    [best, most] = [{ id: thing.id, at, turnDegrees, enlarged, corners, tag: at }, score];
  }
  return best;
}

function layTags(
  laid: readonly Laid[],
  floor: Floor,
  sideMm: number,
  pressMm: number,
  chance: Stream,
): Laid[] | null {
  const wall: Floor = { ...floor, radiusXMm: floor.radiusXMm * 1.04, radiusYMm: floor.radiusYMm * 1.04 };
  const places = laid.map((thing) => tagPlaces(thing, laid, wall, sideMm, pressMm));
  if (places.some((list) => list.length === 0)) return null;
  const order = shuffle(chance, [...laid.keys()]).sort(
    (a, b) => around(places, a).length - around(places, b).length,
  );
  const chosen = new Map<number, Point>();
  if (!choose(order, 0, places, sideMm, chosen, { left: 4000 })) return null;
  return laid.map((thing, index) => ({ ...thing, tag: chosen.get(index) ?? thing.at }));
}

/** Places for a find's triangle, nearest first. */
function tagPlaces(
  thing: Laid,
  laid: readonly Laid[],
  wall: Floor,
  sideMm: number,
  pressMm: number,
): Point[] {
  const result: Point[] = [];
  for (let step = 0; step < 24; step += 1) {
    const angle = -Math.PI / 4 + ((step % 2 === 0 ? 1 : -1) * Math.ceil(step / 2) * Math.PI) / 12;
    for (let reach = sideMm * 0.4; reach < sideMm * 0.6 + pressMm * 1.3; reach += sideMm * 0.15) {
      const at: Point = [thing.at[0] + Math.cos(angle) * reach, thing.at[1] + Math.sin(angle) * reach];
      const room = triangleOf(at, sideMm * 1.15);
      if (touch(thing.corners, room)) continue;
      // A number is read as belonging to the find it stands nearest to.
      const isOwn = laid.every((other) => apart(other.at, at) >= reach - 0.001);
      const isClear = !laid.some((other) => touch(other.corners, room));
      if (isOwn && isClear && room.every((corner) => isOnFloor(wall, corner))) result.push(at);
      break;
    }
  }
  return result.sort((a, b) => apart(a, thing.at) - apart(b, thing.at));
}

/** Takes a place for each triangle in turn and steps back when two would touch. */
function choose(
  order: readonly number[],
  depth: number,
  places: readonly (readonly Point[])[],
  sideMm: number,
  chosen: Map<number, Point>,
  budget: { left: number },
): boolean {
  const index = order[depth];
  if (index === undefined) return true;
  for (const at of around(places, index)) {
    budget.left -= 1;
    if (budget.left < 0) return false;
    const room = triangleOf(at, sideMm * 1.12);
    const isFree = [...chosen.values()].every((other) => !touch(triangleOf(other, sideMm), room));
    if (!isFree) continue;
    chosen.set(index, at);
    if (choose(order, depth + 1, places, sideMm, chosen, budget)) return true;
    chosen.delete(index);
  }
  return false;
}
