import * as z from 'zod';
import { BANDS } from '../../library/bands.ts';
import { quantityIds } from '../../making/index.ts';
import { blockBase } from '../block-base.ts';
import { ASKS, LEVER_IDS } from './activity.ts';

const word = z.string().min(1).max(60);
const positive = z.number().positive();
const ask = z.enum(ASKS);

/** What the model is asked about: a find, sizes and choices of one's own, or a find with some of them changed. */
const subject = z.strictObject({
  find: word.optional().describe('The find whose size and stone are taken'),
  'length-mm': positive.optional(),
  'width-mm': positive.optional(),
  'thickness-mm': positive.optional(),
  'diameter-cm': positive.optional(),
  stakes: positive.optional(),
  'nodule-kg': positive.optional(),
  form: word.optional(),
  stone: word.optional(),
  grinder: word.optional(),
  preform: word.optional(),
  extent: word.optional(),
  finish: word.optional(),
  skill: word.optional(),
  wood: word.optional(),
  axe: word.optional(),
  mined: z.boolean().optional(),
});

/** What a lead may write in an estimate block. */
export const estimateBlock = z.strictObject({
  ...blockBase,
  of: z
    .enum(quantityIds)
    .describe('What is estimated: a quantity of the making model; pitlore hours --list names them'),
  for: z
    .union([word, subject])
    .optional()
    .describe('A find, or sizes and choices (length-mm, stone, wood…), or a find with some of them changed'),
  ask: z
    .union([ask, z.partialRecord(z.enum(BANDS), ask)])
    .optional()
    .describe('How pupils answer, for all or band by band: choose, number or interval'),
  among: z
    .array(word)
    .min(2)
    .max(6)
    .optional()
    .describe('The comparisons to choose among, in place of those picked for the answer'),
  levers: z
    .array(z.enum(LEVER_IDS))
    .max(4)
    .optional()
    .describe('What may be changed afterwards; [] for nothing'),
  question: z.string().min(1).max(160).optional().describe('Asked in place of the usual question'),
});

export type EstimateBlock = z.output<typeof estimateBlock>;
