import * as z from 'zod';

const goods = z.array(z.string()).max(9).readonly();

/** What a pupil, a pair or a class did at a gathering. */
export const barterPlay = z.strictObject({
  activity: z.string(),
  /** In order; those that would be refused change nothing and do not count. A gift takes nothing, its return gives nothing. */
  swaps: z
    .array(z.strictObject({ with: z.string(), give: goods, take: goods }))
    .max(500)
    .readonly()
    .optional(),
  /** A whole class: how many cards were dealt; as many as the lesson expects where it is left out. */
  pupils: z.int().optional(),
  /** A whole class: the good in hand at the end, card by card. */
  ends: z.array(z.string()).max(40).readonly().optional(),
  /** A whole class, hands up: how many pupils gained so much. */
  gains: z.record(z.string(), z.int().min(0).max(40)).optional(),
});

export type BarterPlay = z.output<typeof barterPlay>;
