import * as z from 'zod';

const name = z.string().min(1);
const count = z.int().min(0).max(99);
// How much a worth may be is for the check of the world to say.
const worth = z.int().min(0);

const good = z
  .strictObject({
    one: z.string().optional().describe('With its article: "a hide".'),
    many: z.string().optional().describe('"hides"'),
    hours: z.number().min(0).nullable().optional().describe('Hours of work in one, where known.'),
    'spoils-after': z
      .int()
      .min(1)
      .max(99)
      .optional()
      .describe('Handovers after which it is worth nothing to anyone.'),
    'only-given': z.boolean().optional().describe('Never swapped, only given.'),
  })
  .nullable();

const trader = z.strictObject({
  name: z.string().optional(),
  holds: z.record(name, count).describe('How many of each good.'),
  wants: z
    .record(name, z.union([worth, z.array(worth).min(1).max(20)]))
    .describe('What a first, second, third is worth: a number, or a list that never rises.'),
  'for-swapping': z.array(name).optional().describe('Goods wanted only to swap on.'),
  door: z.enum(['open', 'gift']).optional().describe('gift: swaps only with those who have given something.'),
  returns: name.optional().describe('The good given, later, in return for a gift.'),
});

/** What a gathering written by hand holds, in a file of its own or in a block. */
export const worldParts = z.strictObject({
  aim: name.describe('The good to come home with.'),
  bundle: z
    .int()
    .min(1)
    .max(3)
    .optional()
    .describe('The most things one side of a swap may be; 1 where left out.'),
  goods: z.record(name, good).describe('Every good, by the name used below.'),
  you: trader.omit({ name: true, door: true, returns: true }),
  traders: z.record(name, trader).describe('Those you meet, in order.'),
});

/** A world file: one gathering, by hand. */
export const worldFile = z.strictObject({ title: z.string().optional(), ...worldParts.shape });

export type WorldParts = z.output<typeof worldParts>;
