import { shownFinds } from '../../shared/activities/index.ts';
import type { Plan } from '../../shared/compile/index.ts';
import type { FindToDraw } from '../../shared/drawing/index.ts';

const SHOWN = 4;

/** The finds shown beside a lesson in the list: of different types, the largest first. */
export function entryDrawings(plan: Plan): readonly FindToDraw[] {
  const types = new Set<string>();
  return plan.activities
    .flatMap((activity) => shownFinds(activity))
    .toSorted((a, b) => b.lengthMm * b.widthMm - a.lengthMm * a.widthMm)
    .filter(({ objectType }) => !types.has(objectType) && types.add(objectType))
    .slice(0, SHOWN);
}
