import type { FindToDraw, PitToCut } from '../../shared/drawing/index.ts';
import { drawnFind, drawnPlan } from './drawn.ts';

/**
 * A pit's plan with its finds lying in it, as one drawing. Laid out by id: alike however the finds were dealt.
 *
 * @param pointTo Where finds are drawn elsewhere in the file: the id a find's face has there.
 */
export function comparedPlan(
  pit: PitToCut,
  finds: readonly FindToDraw[],
  pointTo?: (find: FindToDraw) => string,
): { readonly viewBox: string; readonly markup: string } {
  const plan = drawnPlan(
    pit,
    finds.toSorted((a, b) => (a.id < b.id ? -1 : 1)),
  );
  const placed = plan.places.flatMap((place) => {
    const find = finds.find(({ id }) => id === place.id);
    if (find === undefined) return [];
    const { viewBox, markup } = drawnFind(find, 'face');
    const { width, height } = viewBox;
    const [x, y] = [viewBox.x + width / 2, viewBox.y + height / 2];
    const face =
      pointTo === undefined
        ? markup
        : `<use href="#${pointTo(find)}" x="${viewBox.x}" y="${viewBox.y}" width="${width}" height="${height}"/>`;
    return [
      `<g transform="translate(${place.xMm} ${place.yMm}) rotate(${place.turnDegrees}) scale(${place.enlarged}) translate(${-x} ${-y})">${face}</g>`,
    ];
  });
  return { viewBox: `0 0 ${plan.widthMm} ${plan.heightMm}`, markup: plan.markup + placed.join('') };
}
