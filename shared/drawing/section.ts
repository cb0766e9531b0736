import type { Curve } from './curve.ts';
import type { FindToDraw } from './drawing.ts';
import type { Hand } from './hand.ts';
import type { Mark } from './mark.ts';
import { lump, mirrored, outline, type Row } from './outline.ts';
import type { View } from './sketch.ts';
import { hatch } from './texture.ts';

type SectionForm = 'lens' | 'oval' | 'dome' | 'triangle' | 'trapezoid' | 'block';

// The flat side of a struck piece (its underside) is drawn at the foot.
const ROWS: { readonly [Form in Exclude<SectionForm, 'oval'>]: readonly Row[] } = {
  lens: mirrored([
    [0, 0],
    [0.3, 0.14],
    [0.5, 0.5, 'corner'],
    [0.3, 0.86],
    [0, 1],
  ]),
  dome: mirrored([
    [0, 0.04],
    [0.3, 0.01],
    [0.5, 0, 'corner'],
    [0.42, 0.55],
    [0.22, 0.95],
    [0, 1],
  ]),
  triangle: [
    [-0.5, 0.05, 'corner'],
    [0, 0],
    [0.5, 0.05, 'corner'],
    [0.05, 1, 'corner'],
  ],
  trapezoid: [
    [-0.5, 0.05, 'corner'],
    [0, 0],
    [0.5, 0.05, 'corner'],
    [0.16, 0.98, 'corner'],
    [-0.2, 1, 'corner'],
  ],
  block: mirrored([
    [0, 0],
    [0.44, 0.02, 'corner'],
    [0.5, 0.5],
    [0.42, 0.96, 'corner'],
    [0, 1],
  ]),
};

/** A section's outline, filling a box exactly. */
const sectionCurve = (form: SectionForm, widthMm: number, heightMm: number, hand: Hand): Curve =>
  form === 'oval'
    ? lump(widthMm, heightMm, hand, 2.3, 0.015)
    : outline(ROWS[form], widthMm, heightMm, hand, 0.015);

/** A section: outline filled with slanting lines. */
export function sectionView(
  form: SectionForm,
  widthMm: number,
  heightMm: number,
  hand: Hand,
  find: FindToDraw,
): View {
  const curve = sectionCurve(form, widthMm, heightMm, hand);
  return { part: 'section', widthMm, heightMm, marks: cut(curve, find) };
}

/** The marks of a cut surface; its lines are as far apart as suits the whole drawing. */
export function cut(curve: Curve, find: FindToDraw): Mark[] {
  const gap = Math.max(find.lengthMm, find.widthMm) * 0.036;
  return [
    { ink: 'outline', path: curve.path },
    { ink: 'hatch', path: hatch(curve.points, gap) },
  ];
}

/** A section through a hollow bone: cut wall round an empty middle. */
export function hollowSection(widthMm: number, heightMm: number, hand: Hand, find: FindToDraw): View {
  const outer = lump(widthMm, heightMm, hand, 2.3, 0.03);
  const inner = lump(widthMm * 0.56, heightMm * 0.56, hand, 2.1, 0.05, 9, ([x, y]) => [
    x + widthMm * 0.2,
    y + heightMm * 0.22,
  ]);
  const marks: Mark[] = [...cut(outer, find), { ink: 'open', path: inner.path, part: 'hollow' }];
  return { part: 'section', widthMm, heightMm, marks };
}
