/** Age bands, from age (inclusive) to age (exclusive); the order is the order of ages. */
export const BANDS = ['4-5', '5-7', '7-9', '9-11', '11-14', '14-16'] as const;

export type Band = (typeof BANDS)[number];

/** The youngest of some bands. @throws RangeError on an empty list. @example youngest(['9-11', '7-9']) // '7-9' */
export function youngest(bands: readonly Band[]): Band {
  const found = BANDS.find((band) => bands.includes(band));
  if (found === undefined) throw new RangeError('no bands given');
  return found;
}

/** The youngest age of some bands, in whole years. @throws RangeError on an empty list. @example youngestAge(['7-9', '9-11']) // 7 */
export const youngestAge = (bands: readonly Band[]): number => Number(youngest(bands).split('-')[0]);
