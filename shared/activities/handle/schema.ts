import * as z from 'zod';
import { BANDS } from '../../library/bands.ts';
import { EDGE_CLASSES } from '../../safety/index.ts';
import { blockBase } from '../block-base.ts';
import { PIECE_IS, SESSION_EXPOSURES } from './activity.ts';

const words = z.string().min(1).max(160);

const piece = z.strictObject({
  find: z.string().min(1).max(60).describe('A find of the site: the piece, or what it is a copy of'),
  is: z
    .enum(PIECE_IS)
    .describe(
      'original: the find itself; replica: a copy in the same stuff; blunt-replica: one without an edge',
    ),
  edge: z.enum(EDGE_CLASSES).optional().describe('Its class, E0 blunt to E3 acute, as checked that day'),
  exposure: z
    .enum(SESSION_EXPOSURES)
    .optional()
    .describe('How near a child comes: look, touch-held (the adult keeps hold), or handle, which is usual'),
  hold: z
    .union([words, z.partialRecord(z.enum(BANDS), words)])
    .optional()
    .describe('How it is held, for all or band by band, in place of the usual words'),
  look: words.optional().describe('What to look for, in place of the usual words'),
  feel: words.optional().describe('What to feel for, in place of the usual words'),
  listen: words.optional().describe('What to listen for, in place of the usual words'),
});

/** What a lead may write in a handle block. */
export const handleBlock = z.strictObject({
  ...blockBase,
  pieces: z
    .array(piece)
    .min(1)
    .max(12)
    .describe(
      'The pieces in the order they are passed: find, is, and if need be edge, exposure, hold, look, feel, listen',
    ),
  children: z
    .int()
    .min(1)
    .max(60)
    .optional()
    .describe(
      'Children at the table at once; as many as fit if left out, and the others at the rest of the lesson',
    ),
  question: z.string().min(1).max(160).optional().describe('Asked in place of the usual question'),
});

export type HandleBlock = z.output<typeof handleBlock>;
export type WrittenPiece = z.output<typeof piece>;
