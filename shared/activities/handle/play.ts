import * as z from 'zod';
import { SENSES } from './activity.ts';

const hands = z.int().min(0).max(99);

/** What a pupil, a pair or a class did with the pieces. */
export const handlePlay = z.strictObject({
  activity: z.string(),
  /** By piece, the senses it was met with. */
  met: z.record(z.string(), z.array(z.enum(SENSES))),
  /** By piece, hands for asking more about it; 1 for one pupil or pair. */
  asks: z.record(z.string(), hands).optional(),
});

export type HandlePlay = z.output<typeof handlePlay>;
