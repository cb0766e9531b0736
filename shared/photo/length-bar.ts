/** A place in a picture, in picture points from its upper left corner. */
export interface Spot {
  readonly x: number;
  readonly y: number;
}

/** A bar over a picture, from one end of a find's length to the other. */
export type LengthBar = readonly [Spot, Spot];

/** How long a bar is, in whole picture points; at least 1. */
export const barLength = ([from, to]: LengthBar): number =>
  Math.max(1, Math.round(Math.hypot(to.x - from.x, to.y - from.y)));

/** The share of a picture that a bar takes before anybody has moved its ends. ASM. */
const FIRST_SHARE = 0.8;

/**
 * A bar along the middle of a picture's longer side; where its length is known already, of that length, slanting where it is longer than the side.
 *
 * @example firstBar(1000, 600, null) // [{ x: 100, y: 300 }, { x: 900, y: 300 }]
 */
export function firstBar(widthPx: number, heightPx: number, lengthPx: number | null): LengthBar {
  const isWide = widthPx >= heightPx;
  const [longerPx, shorterPx] = isWide ? [widthPx, heightPx] : [heightPx, widthPx];
  const wanted = Math.min(lengthPx ?? longerPx * FIRST_SHARE, Math.hypot(longerPx, shorterPx));
  const along = Math.min(wanted, longerPx);
  const across = Math.sqrt(Math.max(0, wanted ** 2 - along ** 2));
  const end = (sign: 1 | -1): Spot => {
    const [far, near] = [longerPx / 2 + (sign * along) / 2, shorterPx / 2 + (sign * across) / 2];
    return isWide ? { x: far, y: near } : { x: near, y: far };
  };
  return [end(-1), end(1)];
}

/** A bar with one of its ends at another spot, kept within the picture. */
export function moveEnd(
  bar: LengthBar,
  end: 0 | 1,
  to: Spot,
  { widthPx, heightPx }: { readonly widthPx: number; readonly heightPx: number },
): LengthBar {
  const spot = {
    x: Math.min(widthPx, Math.max(0, to.x)),
    y: Math.min(heightPx, Math.max(0, to.y)),
  };
  return end === 0 ? [spot, bar[1]] : [bar[0], spot];
}
