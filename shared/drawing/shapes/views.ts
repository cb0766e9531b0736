import type { Curve } from '../curve.ts';
import type { Mark } from '../mark.ts';
import { lump } from '../outline.ts';
import { shadeEdge } from '../shade-edge.ts';
import type { Sketch, View } from '../sketch.ts';

/** The main view: an outline with its marks on it. */
export const faceOf = (curve: Curve, widthMm: number, heightMm: number, marks: readonly Mark[]): View => ({
  part: 'face',
  widthMm,
  heightMm,
  marks: [
    { ink: 'outline', path: curve.path, part: 'outline' },
    ...marks,
    shadeEdge(curve.points, Math.max(widthMm, heightMm)),
  ],
});

/** The edge view of a rounded thing: as high as its face, as wide as it is thick. */
export function edgeOf({ find, hand }: Sketch, n = 2.2): View {
  const curve = lump(find.thicknessMm, find.lengthMm, hand, n, 0.02);
  return {
    part: 'edge',
    widthMm: find.thicknessMm,
    heightMm: find.lengthMm,
    marks: [{ ink: 'outline', path: curve.path }],
  };
}
