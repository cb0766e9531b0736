import * as z from 'zod';

/** What a pupil, a pair or a class did with a sort. */
export const sortPlay = z.strictObject({
  activity: z.string(),
  /** Find id to tray: the tray's id, or for trays of one's own any name. Finds left in the pit are missing. */
  placed: z.record(z.string(), z.string()).optional(),
  /** Hands up: find id to tray to how many hands. */
  hands: z.record(z.string(), z.record(z.string(), z.number().min(0))).optional(),
});

export type SortPlay = z.output<typeof sortPlay>;
