import * as z from 'zod';
import { blockBase } from '../block-base.ts';

const voice = z.strictObject({
  who: z.string().min(1).max(80).describe('Who argues so: some archaeologists, a potter, the diggers'),
  says: z.string().min(1).max(400).describe('What they argue, in your own words'),
  source: z
    .string()
    .min(1)
    .max(60)
    .describe('The id of a work in content/sources.yaml, or common-practice, or invented'),
});

/** What a lead may write in a talk block. */
export const talkBlock = z.strictObject({
  ...blockBase,
  question: z.string().min(1).max(200).describe('A question with no right answer'),
  voices: z
    .array(voice)
    .min(2)
    .max(6)
    .describe('What archaeologists argue, at least two of them: who, says, source'),
  evidence: z
    .array(z.string().min(1).max(240))
    .min(1)
    .max(6)
    .describe('What would change our mind, if it were found'),
  stances: z
    .array(z.string().min(1).max(80))
    .min(2)
    .max(5)
    .optional()
    .describe('What a group can stand by, before and after; nobody is asked to take a stand if left out'),
});

export type TalkBlock = z.output<typeof talkBlock>;
