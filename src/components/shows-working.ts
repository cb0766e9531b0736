import type { Plan } from '../../shared/compile/index.ts';
import type { Band } from '../../shared/library/index.ts';

/** From this band up the score's working is shown. */
const SHOWS_WORKING: Readonly<Record<Band, boolean>> = {
  '4-5': false,
  '5-7': false,
  '7-9': false,
  '9-11': true,
  '11-14': true,
  '14-16': true,
};

/** Whether any band of a lesson sees how its score is worked out. */
export const showsWorking = (plan: Pick<Plan, 'bands'>): boolean =>
  plan.bands.some((band) => SHOWS_WORKING[band]);
