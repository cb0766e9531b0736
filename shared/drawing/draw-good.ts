import { drawFind } from './draw-find.ts';
import type { Drawing, FindToDraw } from './drawing.ts';
import { DRAWERS } from './drawers.ts';
import { GOOD_SKETCHES, type GoodSketch } from './good-sketches.ts';
import { inked, markup, type Mark } from './mark.ts';

/** A thing that is a find too is drawn as one, at a usual size. Lengths in mm; ASM. */
const AS_FIND: Readonly<
  Record<
    string,
    readonly [objectType: string, material: string, length: number, width: number, thickness: number]
  >
> = {
  flint: ['core', 'flint', 90, 75, 60],
  pick: ['antler-pick', 'antler', 420, 160, 45],
  arrowhead: ['leaf-arrowhead', 'flint', 42, 22, 4],
  axehead: ['polished-axe', 'flint', 120, 55, 30],
  scraper: ['end-scraper', 'flint', 46, 37, 12],
};

const SIDE = 48;

const sketched = (sketch: GoodSketch): Drawing => {
  const marks = sketch.map(([ink, path]): Mark => ({ ink, path }));
  return { markup: inked(markup(marks)), viewBox: { x: 0, y: 0, width: SIDE, height: SIDE } };
};

/**
 * A small drawing of a thing that is swapped: its find drawing where it is a find, else a plain sketch of ours; a tied
 * bundle for what we have no drawing of. The same name always gives the same markup.
 *
 * @example drawGood('hide').viewBox // { x: 0, y: 0, width: 48, height: 48 }
 */
export function drawGood(id: string): Drawing {
  const sketch = GOOD_SKETCHES.get(id);
  if (sketch !== undefined) return sketched(sketch);
  const [objectType, material, lengthMm, widthMm, thicknessMm] = AS_FIND[id] ?? [id, '', 70, 50, 15];
  if (!DRAWERS.has(objectType)) return sketched(GOOD_SKETCHES.get('bundle') ?? []);
  const find: FindToDraw = {
    id: `good-${id}`,
    objectType,
    material,
    state: 'whole',
    lengthMm,
    widthMm,
    thicknessMm,
    count: 1,
  };
  return drawFind(find, { view: 'face', detail: 'small' });
}
