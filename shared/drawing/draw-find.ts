import { derive, stream } from '../chance/index.ts';
import { anyThing, DRAWERS } from './drawers.ts';
import type { Drawing, FindToDraw } from './drawing.ts';
import { handOf } from './hand.ts';
import { inked, markup, type Mark } from './mark.ts';
import { linePath } from './path.ts';
import { scaleBar } from './scale-bar.ts';
import type { View } from './sketch.ts';

export interface DrawFindOptions {
  /** `face` is the main view alone; `full` adds edge, back and section as the convention for the type asks. */
  readonly view?: 'face' | 'full';
  /** `small` is for about 96 px: fewer ripples, wider spaced dots. */
  readonly detail?: 'small' | 'large';
  /** A bar in whole centimetres or millimetres under the drawing. */
  readonly scaleBar?: boolean;
}

interface Placed {
  readonly view: View;
  readonly x: number;
  readonly y: number;
}

/**
 * A find drawn from what is recorded of it, in mm: the same find always gives the same markup.
 *
 * @example drawFind(find, { view: 'face', detail: 'small' }).viewBox
 */
export function drawFind(find: FindToDraw, options: DrawFindOptions = {}): Drawing {
  const hand = handOf(derive(stream('drawing'), find.id));
  const isSmall = options.detail === 'small';
  const sketched = (DRAWERS.get(find.objectType) ?? anyThing)({ find, hand, isSmall });
  const face = sketched.face;
  const more = options.view === 'full' ? sketched.more() : [];
  const gap = Math.max(face.widthMm, face.heightMm) * 0.12;
  const placed: Placed[] = [{ view: face, x: 0, y: 0 }];
  let [left, right, foot] = [0, face.widthMm, face.heightMm];
  let ticks = '';
  const { beside } = sketched;
  if (beside !== undefined) {
    left -= gap + beside.widthMm;
    placed.push({ view: beside, x: left, y: 0 });
  }
  for (const view of more) {
    if (view.part === 'section' && view.heightMm !== face.heightMm) {
      const x = (face.widthMm - view.widthMm) / 2;
      placed.push({ view, x, y: face.heightMm + gap });
      left = Math.min(left, x);
      right = Math.max(right, x + view.widthMm);
      foot = Math.max(foot, face.heightMm + gap + view.heightMm);
      if (sketched.cutAtMm !== undefined) {
        const [reach, y] = [gap * 0.22, sketched.cutAtMm];
        ticks +=
          linePath([
            [-gap * 0.12 - reach, y],
            [-gap * 0.12, y],
          ]) +
          linePath([
            [face.widthMm + gap * 0.12, y],
            [face.widthMm + gap * 0.12 + reach, y],
          ]);
      }
    } else {
      placed.push({ view, x: right + gap, y: 0 });
      right += gap + view.widthMm;
      foot = Math.max(foot, view.heightMm);
    }
  }
  let inner = placed.map(group).join('');
  const notes: Mark[] = [{ ink: 'hatch', path: ticks, part: 'section-ticks' }];
  inner += markup(notes);
  const top = face.marks.some((mark) => mark.part === 'missing') ? -face.heightMm * 0.44 : 0;
  const pad = Math.max(right - left, foot - top) * 0.05;
  if (options.scaleBar === true) {
    const bar = scaleBar(
      left,
      foot + pad * 1.4,
      Math.max(right - left, (foot - top) * 0.36),
      Math.max(right - left, foot - top),
    );
    inner += bar.markup;
    foot = bar.footMm;
    right = Math.max(right, left + bar.widthMm);
  }
  return {
    markup: inked(inner),
    viewBox: {
      x: round(left - pad),
      y: round(top - pad),
      width: round(right - left + 2 * pad),
      height: round(foot - top + 2 * pad),
    },
  };
}

const round = (value: number): number => Math.round(value * 100) / 100;

function group({ view, x, y }: Placed): string {
  const move = x === 0 && y === 0 ? '' : ` transform="translate(${round(x)} ${round(y)})"`;
  return `<g data-part="${view.part}"${move}>${markup(view.marks)}</g>`;
}
