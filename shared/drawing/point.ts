/** A place in the drawing, mm: x to the right, y down. */
export type Point = readonly [x: number, y: number];

/** The item at an index, counted round and round the list. @throws RangeError on an empty list. */
export function around<Item>(list: readonly Item[], index: number): Item {
  if (list.length === 0) throw new RangeError('an empty list has no item');
  const inside = ((index % list.length) + list.length) % list.length;
  return list[inside] as Item; // the index lies inside the list
}

/** The point a part of the way from one to another: 0 the first, 1 the second. */
export const between = (from: Point, to: Point, part: number): Point => [
  from[0] + (to[0] - from[0]) * part,
  from[1] + (to[1] - from[1]) * part,
];

/** The distance between two points, mm. */
export const apart = (from: Point, to: Point): number => Math.hypot(to[0] - from[0], to[1] - from[1]);

/** A point at an angle (radians, clockwise from the right) and distance from another. */
export const away = (from: Point, angle: number, distance: number): Point => [
  from[0] + Math.cos(angle) * distance,
  from[1] + Math.sin(angle) * distance,
];
