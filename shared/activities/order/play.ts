import * as z from 'zod';

/** What a pupil, a pair or a class did with the cards of an order. */
export const orderPlay = z.strictObject({
  activity: z.string(),
  /** Step ids, first to last. An inner list holds cards laid at one place; cards left out are missing. */
  laid: z.array(z.union([z.string(), z.array(z.string())])),
});

export type OrderPlay = z.output<typeof orderPlay>;
