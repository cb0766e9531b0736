import type { Band } from '../library/index.ts';

/** From this band up the score's working is shown. */
export const SHOWS_WORKING: Readonly<Record<Band, boolean>> = {
  '4-5': false,
  '5-7': false,
  '7-9': false,
  '9-11': true,
  '11-14': true,
  '14-16': true,
};
