import * as z from 'zod';
import { STEPS_DRAWN } from '../../drawing/index.ts';
import { blockBase } from '../block-base.ts';

const stepId = z
  .string()
  .regex(/^[a-z][a-z0-9-]{0,39}$/, 'small letters, digits and hyphens, a letter first, 40 at most');

/** What a lead may write in an order block. */
export const orderBlock = z.strictObject({
  ...blockBase,
  steps: z
    .array(
      z.strictObject({
        id: stepId.describe('A short name for the step, so that others can follow it'),
        name: z.string().min(1).max(48).describe('What stands on the card'),
        'must-follow': z
          .array(stepId)
          .optional()
          .describe('The ids of the steps that must be done before it'),
        why: z.string().min(1).max(160).optional().describe('Why it cannot come before those'),
        drawing: z.enum(STEPS_DRAWN).optional().describe('A drawing for the card'),
      }),
    )
    .min(3)
    .max(12)
    .describe(
      'The steps: id, name, must-follow, why, drawing. Every order that keeps to must-follow is right',
    ),
  of: z.string().min(1).optional().describe('The find whose making this is; it is drawn above the cards'),
  source: z.string().min(1).optional().describe('How the order is known: an id from content/sources.yaml'),
  question: z.string().max(120).optional().describe('Asked in place of the usual question'),
});

export type OrderBlock = z.output<typeof orderBlock>;
