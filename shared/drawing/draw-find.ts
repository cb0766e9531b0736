import { derive, stream } from '../chance/index.ts';
import { arrange, lying, type Placed } from './arrange.ts';
import { anyThing, DRAWERS } from './drawers.ts';
import type { Drawing, FindToDraw } from './drawing.ts';
import { handOf } from './hand.ts';
import { drawPhoto } from './draw-photo.ts';
import { inked, markup } from './mark.ts';
import { scaleBar } from './scale-bar.ts';

export interface DrawFindOptions {
  /**
   * `face` is the main view, a pot's wall beside it; `full` adds edge, back and section as the convention for
   * the type asks, or is the lead's own photograph; `lying` is the thing alone, for laying in a plan.
   */
  readonly view?: 'face' | 'full' | 'lying';
  /** `small` is for about 96 px: fewer ripples, wider spaced dots. */
  readonly detail?: 'small' | 'large';
  /** A bar in whole centimetres or millimetres under the drawing. */
  readonly scaleBar?: boolean;
}

/**
 * A find drawn from what is recorded of it, in mm: the same find always gives the same markup.
 *
 * @example drawFind(find, { view: 'face', detail: 'small' }).viewBox
 */
export function drawFind(find: FindToDraw, options: DrawFindOptions = {}): Drawing {
  if (options.view === 'full' && find.photo !== undefined) return drawPhoto(find.photo, find);
  const hand = handOf(derive(stream('drawing'), find.id));
  const isSmall = options.detail === 'small';
  const sketched = (DRAWERS.get(find.objectType) ?? anyThing)({ find, hand, isSmall });
  const laid =
    options.view === 'lying'
      ? lying(sketched)
      : arrange(sketched, options.view === 'full' ? sketched.more() : []);
  const { left, top } = laid;
  let { right, foot } = laid;
  let inner = laid.placed.map(group).join('') + markup(laid.notes);
  const pad = Math.max(right - left, foot - top) * 0.05;
  if (options.scaleBar === true) {
    const [across, down] = [right - left, foot - top];
    const bar = scaleBar(left, foot + pad * 1.4, Math.max(across, down * 0.36), Math.max(across, down));
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
