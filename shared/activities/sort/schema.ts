import * as z from 'zod';
import { ATTRIBUTES } from '../../library/library.ts';
import { blockBase } from '../block-base.ts';

const findId = z.string().min(1);
const trayName = z.string().min(1).max(40);

/** What a lead may write in a sort block. */
export const sortBlock = z.strictObject({
  ...blockBase,
  finds: z
    .union([
      z.array(findId).min(1).max(60),
      z.strictObject({
        pit: z.string().min(1).describe('Every find of this pit'),
        'leave-out': z.array(findId).optional().describe('Finds of the pit that are not used'),
      }),
    ])
    .describe('A pit, or a list of find ids'),
  by: z.enum(ATTRIBUTES).describe('The attribute that says where a find belongs'),
  trays: z
    .union([
      z.literal('ours'),
      z
        .array(
          z.union([
            trayName,
            z.strictObject({
              name: trayName.describe('What stands on the tray'),
              holds: z
                .array(z.string().min(1))
                .min(1)
                .describe('The values of the attribute that belong in it'),
              hint: z.string().max(80).optional().describe('A few words under the name'),
            }),
          ]),
        )
        .min(2)
        .max(10),
    ])
    .describe('The trays, or "ours" where pupils make their own'),
  ordered: z
    .boolean()
    .optional()
    .describe('The trays are steps on one line (old to young): near misses count in part'),
  also: z
    .array(
      z.strictObject({
        find: findId,
        tray: trayName,
        because: z.string().min(1).max(160).describe('Why this can be argued'),
      }),
    )
    .optional()
    .describe('A second home that can be argued, with its reason'),
  question: z.string().max(120).optional().describe('Asked in place of the usual question'),
});

export type SortBlock = z.output<typeof sortBlock>;
