import * as z from 'zod';

/** An answer by its word, or how many hands went up for each. */
const said = z.union([z.string(), z.record(z.string(), z.number().min(0))]);

/** What a pupil, a pair or a class said of the pits. What was left open is missing. */
export const comparePlay = z.strictObject({
  activity: z.string(),
  /** By kind: both, only-first, only-second or neither. */
  places: z.record(z.string(), said).optional(),
  /** By two pits ("P3-P5"): how alike, on the scale of the measure. */
  likeness: z.record(z.string(), z.number()).optional(),
  /** By two pits: chance-could or chance-hardly, before any shuffle. */
  before: z.record(z.string(), said).optional(),
  /** The same after the shuffles. */
  after: z.record(z.string(), said).optional(),
});

export type ComparePlay = z.output<typeof comparePlay>;
