import * as z from 'zod';

const positive = z.number().positive();
const count = z.int().min(0).max(999);

/** What a pupil, a pair or a class said: one of these. */
export const estimatePlay = z.strictObject({
  activity: z.string(),
  /** The id of the comparison chosen. */
  choice: z.string().optional(),
  /** In the activity's unit. */
  number: positive.optional(),
  interval: z.strictObject({ lower: positive, upper: positive }).optional(),
  /** A class: everyone's number. */
  numbers: z.array(positive).max(500).optional(),
  /** A class: comparison id to how many hands. */
  hands: z.record(z.string(), count).optional(),
  /** A class: hands for each stretch of the line, from its start. */
  bins: z.array(count).optional(),
});

export type EstimatePlay = z.output<typeof estimatePlay>;
