import { forBand } from '../activities/index.ts';
import type { Band } from '../library/bands.ts';
import type { Plan } from './plan.ts';

/**
 * A plan as one of its bands meets it: asked as that band is, in that band's words.
 *
 * @throws RangeError when the lesson is not for that band.
 */
export function bandPlan(plan: Plan, band: Band): Plan {
  if (!plan.bands.includes(band)) throw new RangeError(`the lesson is not for ${band}`);
  return {
    ...plan,
    bands: [band],
    activities: plan.activities.map((activity) => forBand(activity, band)),
  };
}
