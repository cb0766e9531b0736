import { fittedCurve, type Curve, type Knot, type Shift } from './curve.ts';
import type { Hand } from './hand.ts';

/** A row of a shape's table: across from -0.5 to 0.5, up from 0 at the foot to 1, and `'corner'` where the curve breaks. */
export type Row = readonly [across: number, up: number, corner?: 'corner'];

/** The rows of a half, foot first, with their mirror images: a shape alike on both sides. */
export function mirrored(half: readonly Row[]): Row[] {
  const other = half
    .filter(([across]) => across !== 0)
    .map(([across, up, corner]): Row => (corner === undefined ? [-across, up] : [-across, up, corner]));
  return [...half, ...other.reverse()];
}

/** Rows as knots, y down, each moved a little by the hand: as far in mm across as up. */
function knots(rows: readonly Row[], hand: Hand, wobble: number, widthMm: number, heightMm: number): Knot[] {
  const least = Math.min(widthMm, heightMm);
  const [wobbleX, wobbleY] = [(wobble * least) / widthMm, (wobble * least) / heightMm];
  return rows.map(([across, up, corner]) => ({
    at: [across + hand.wobble(wobbleX), 1 - up + hand.wobble(wobbleY)],
    corner: corner === 'corner',
  }));
}

/** A shape's outline, filling its box exactly. */
export const outline = (
  rows: readonly Row[],
  widthMm: number,
  heightMm: number,
  hand: Hand,
  wobble = 0.02,
  shift?: Shift,
): Curve => fittedCurve(knots(rows, hand, wobble, widthMm, heightMm), widthMm, heightMm, shift);

/** The same shape seen from its other side. */
export const flipped = (rows: readonly Row[]): Row[] =>
  rows.map(([across, up, corner]): Row => (corner === undefined ? [-across, up] : [-across, up, corner]));

/** The rows of a broken lump: corners at uneven angles, no two lumps alike. */
export function shards(count: number, hand: Hand): Row[] {
  const turn = hand.within(0, 1);
  return Array.from({ length: count }, (_, index): Row => {
    const angle = ((index + turn + hand.wobble(0.3)) / count) * Math.PI * 2;
    const reach = 0.5 * hand.within(0.86, 1.06);
    const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
    // Squarer than a circle: superellipse of exponent 3.
    const square = (Math.abs(cos) ** 3 + Math.abs(sin) ** 3) ** (-1 / 3);
    return [cos * reach * square, 0.5 + sin * reach * square, 'corner'];
  });
}

/** A rounded outline without corners, of a stone or lump: `n` 2 is an ellipse, more is squarer. */
export function lump(
  widthMm: number,
  heightMm: number,
  hand: Hand,
  n = 2.2,
  wobble = 0.03,
  count = 12,
  shift?: Shift,
): Curve {
  const rows: Knot[] = [];
  const turn = hand.within(0, 1);
  for (let index = 0; index < count; index += 1) {
    const angle = ((index + turn) / count) * Math.PI * 2;
    const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
    const reach = 1 + hand.wobble(wobble);
    rows.push({
      at: [
        Math.sign(cos) * Math.abs(cos) ** (2 / n) * reach,
        Math.sign(sin) * Math.abs(sin) ** (2 / n) * reach,
      ],
      corner: false,
    });
  }
  return fittedCurve(rows, widthMm, heightMm, shift);
}

export type { Shift };
