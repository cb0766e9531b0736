import type { Band } from '../../library/bands.ts';

/** How many cards a band can hold in mind at once. ASM: our judgement, to be tried with real groups. */
export const MOST_STEPS: Readonly<Record<Band, number>> = {
  '4-5': 4,
  '5-7': 5,
  '7-9': 8,
  '9-11': 10,
  '11-14': 12,
  '14-16': 12,
};
