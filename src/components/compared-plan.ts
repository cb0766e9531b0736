import type { FindToDraw, PitToCut } from '../../shared/drawing/index.ts';
import { drawnFind, drawnPlan } from './drawn.ts';

/** A pit's plan with its finds lying in it, as one drawing. Laid out by id: alike however the finds were dealt. */
export function comparedPlan(
  pit: PitToCut,
  finds: readonly FindToDraw[],
): { readonly viewBox: string; readonly markup: string } {
  const plan = drawnPlan(
    pit,
    finds.toSorted((a, b) => (a.id < b.id ? -1 : 1)),
  );
  const placed = plan.places.flatMap((place) => {
    const find = finds.find(({ id }) => id === place.id);
    if (find === undefined) return [];
    const { viewBox, markup } = drawnFind(find, 'face');
    const [x, y] = [viewBox.x + viewBox.width / 2, viewBox.y + viewBox.height / 2];
    return [
      `<g transform="translate(${place.xMm} ${place.yMm}) rotate(${place.turnDegrees}) scale(${place.enlarged}) translate(${-x} ${-y})">${markup}</g>`,
    ];
  });
  return { viewBox: `0 0 ${plan.widthMm} ${plan.heightMm}`, markup: plan.markup + placed.join('') };
}
