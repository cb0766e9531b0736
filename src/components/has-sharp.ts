import { shownFinds } from '../../shared/activities/index.ts';
import type { Plan } from '../../shared/compile/index.ts';

/** Materials whose edges cut: common practice, no source. */
const SHARP = new Set(['flint', 'glass', 'iron']);

/** Whether a lesson is about making or using edged stone, whatever it shows: then dust is a hazard too. */
export const isAboutMaking = (plan: Plan): boolean =>
  plan.activities.some(({ aboutMaking }) => aboutMaking === true);

/** Whether a lesson shows, or is about, anything that would cut if it were in the hand. */
export const hasSharp = (plan: Plan): boolean =>
  isAboutMaking(plan) ||
  plan.activities.some((activity) => shownFinds(activity).some(({ material }) => SHARP.has(material)));
