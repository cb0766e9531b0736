import * as z from 'zod';
import { CLASS_SIZES } from '../../bartering/index.ts';
import { worldParts } from '../../library/world-schema.ts';
import { blockBase } from '../block-base.ts';

const goods = z
  .union([z.array(z.string().min(1)).min(1).max(40), z.strictObject({ pit: z.string().min(1) })])
  .optional()
  .describe('Names of goods, or a pit whose things are the goods; common goods where it is left out');

/** What a lead may write in a barter block. */
export const barterBlock = z.strictObject({
  ...blockBase,
  make: z
    .strictObject({
      traders: z.int().min(2).max(8).describe('How many the pupil meets'),
      chain: z.int().min(2).max(6).describe('The fewest swaps it must take'),
      goods,
      aim: z.string().min(1).optional().describe('The good to come home with'),
    })
    .optional()
    .describe('A gathering to be made: how many traders, how long a chain, which goods'),
  world: worldParts.optional().describe('A gathering written out: aim, goods, you, traders'),
  class: z
    .strictObject({
      pupils: z
        .int()
        .min(CLASS_SIZES.least)
        .max(CLASS_SIZES.most)
        .describe('How many pupils there will be; another number can be dealt on the day'),
      goods,
    })
    .optional()
    .describe('A gathering of the whole class: every pupil has a card'),
  wants: z
    .enum(['shown', 'asked'])
    .optional()
    .describe('Wants lie open, or are found by asking; as the age asks where it is left out'),
  question: z.string().max(120).optional().describe('Asked in place of the usual question'),
});

export type BarterBlock = z.output<typeof barterBlock>;
