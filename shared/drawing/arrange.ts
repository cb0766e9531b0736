import type { Mark } from './mark.ts';
import { linePath } from './path.ts';
import type { Sketched, View } from './sketch.ts';

export interface Placed {
  readonly view: View;
  readonly x: number;
  readonly y: number;
}

/** Views laid out on a sheet, and the box they fill, mm. */
export interface Arranged {
  readonly placed: readonly Placed[];
  readonly notes: readonly Mark[];
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly foot: number;
}

/** Marks of a face that stand outside it: the dot of a blow, the dashed line of what is lost. */
const BESIDE_THE_FACE = new Set(['platform-mark', 'missing']);

/** The thing by itself, as it lies in the ground: no section beside it, no dot, nothing of what is lost. */
export function lying({ face }: Sketched): Arranged {
  const marks = face.marks.filter(({ part }) => part === undefined || !BESIDE_THE_FACE.has(part));
  return {
    placed: [{ view: { ...face, marks }, x: 0, y: 0 }],
    notes: [],
    left: 0,
    top: 0,
    right: face.widthMm,
    foot: face.heightMm,
  };
}

/** The face, a pot's wall at its left, then edge and back at its right and sections below, as if rolled over. */
export function arrange({ face, beside, cutAtMm }: Sketched, more: readonly View[]): Arranged {
  const gap = Math.max(face.widthMm, face.heightMm) * 0.12;
  const placed: Placed[] = [{ view: face, x: 0, y: 0 }];
  const notes: Mark[] = [];
  let [left, right, foot] = [0, face.widthMm, face.heightMm];
  if (beside !== undefined) {
    left -= gap + beside.widthMm;
    placed.push({ view: beside, x: left, y: 0 });
  }
  for (const view of more) {
    // A long section is as high as the face and stands beside it; one across lies below.
    if (view.part === 'section' && view.heightMm !== face.heightMm) {
      const x = (face.widthMm - view.widthMm) / 2;
      placed.push({ view, x, y: face.heightMm + gap });
      [left, right] = [Math.min(left, x), Math.max(right, x + view.widthMm)];
      foot = Math.max(foot, face.heightMm + gap + view.heightMm);
      if (cutAtMm !== undefined) notes.push(cutTicks(face.widthMm, cutAtMm, gap));
    } else {
      placed.push({ view, x: right + gap, y: 0 });
      right += gap + view.widthMm;
      foot = Math.max(foot, view.heightMm);
    }
  }
  const top = face.marks.some(({ part }) => part === 'missing') ? -face.heightMm * 0.44 : 0;
  return { placed, notes, left, top, right, foot };
}

/** Two short lines beside the face, at the height where the section was cut. */
function cutTicks(widthMm: number, y: number, gap: number): Mark {
  const [near, far] = [gap * 0.12, gap * 0.34];
  const left = linePath([
    [-far, y],
    [-near, y],
  ]);
  const right = linePath([
    [widthMm + near, y],
    [widthMm + far, y],
  ]);
  return { ink: 'hatch', path: left + right, part: 'section-ticks' };
}
