import { shownFinds } from '../../shared/activities/index.ts';
import type { Plan } from '../../shared/compile/index.ts';

/** Materials whose edges cut: common practice, no source. */
const SHARP = new Set(['flint', 'glass', 'iron']);

/** Whether a lesson shows anything that would cut if it were in the hand. */
export const hasSharp = (plan: Plan): boolean =>
  plan.activities.some((activity) => shownFinds(activity).some(({ material }) => SHARP.has(material)));
