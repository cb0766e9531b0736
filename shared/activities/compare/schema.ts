import * as z from 'zod';
import { LIKENESSES } from '../../assemblage/index.ts';
import { blockBase } from '../block-base.ts';

/** What a lead may write in a compare block. */
export const compareBlock = z.strictObject({
  ...blockBase,
  ask: z
    .enum(['places', 'chance'])
    .describe(
      'places: which kinds lie in both of two pits, which in one. chance: how alike pits are, and whether chance alone could do it',
    ),
  pits: z
    .array(z.string().min(1))
    .min(2)
    .max(10)
    .describe('The pits, by their ids: two for places, three to ten for chance'),
  kinds: z
    .array(z.string().min(1))
    .min(2)
    .max(24)
    .optional()
    .describe('The object types to ask about, or to count; all that these pits hold where left out'),
  by: z
    .enum(LIKENESSES)
    .optional()
    .describe(
      'For chance, how alike is measured: jaccard or dice by the kinds shared, brainerd-robinson by counts',
    ),
  reading: z
    .string()
    .min(1)
    .max(300)
    .optional()
    .describe('What archaeologists make of it; shown on the record card'),
  doubts: z
    .array(z.string().min(1).max(200))
    .max(4)
    .optional()
    .describe('Reasons to doubt that reading; shown beside it'),
  question: z.string().max(120).optional().describe('Asked in place of the usual question'),
});

export type CompareBlock = z.output<typeof compareBlock>;
