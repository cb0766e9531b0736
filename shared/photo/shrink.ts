/** One way to make a photograph smaller: its longer side in picture points, and the quality of the JPEG from 0 to 1. */
export interface ShrinkTry {
  readonly longestPx: number;
  readonly quality: number;
}

/** Tried in this order until the photograph is light enough: first less finely written, then smaller. ASM. */
export const SHRINK_TRIES: readonly ShrinkTry[] = [
  { longestPx: 1000, quality: 0.82 },
  { longestPx: 1000, quality: 0.7 },
  { longestPx: 800, quality: 0.7 },
  { longestPx: 640, quality: 0.65 },
  { longestPx: 480, quality: 0.55 },
  { longestPx: 320, quality: 0.5 },
];

/** A larger file is not read at all: a cheap tablet has no room for it. ASM, in bytes. */
export const MOST_FILE_BYTES = 80_000_000;

/** The sides of a picture whose longer side is at most `longestPx`, in whole points; never larger than it was. */
export function sidesWithin(
  widthPx: number,
  heightPx: number,
  longestPx: number,
): { readonly widthPx: number; readonly heightPx: number } {
  const scale = Math.min(1, longestPx / Math.max(widthPx, heightPx));
  return {
    widthPx: Math.max(1, Math.round(widthPx * scale)),
    heightPx: Math.max(1, Math.round(heightPx * scale)),
  };
}
