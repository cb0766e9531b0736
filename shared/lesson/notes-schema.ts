import * as z from 'zod';

const sentence = z.string().min(1).max(400);
const known = {
  id: z.string().min(1).optional().describe('The id of one of ours, whose place this takes'),
  source: z.string().min(1).max(240).optional().describe('Where it comes from, as a reader should see it'),
} as const;

/** What a lead adds to the teacher notes, puts in the place of ours, or leaves out. */
export const lessonNotes = z.strictObject({
  'leave-out': z
    .array(z.string().min(1))
    .max(60)
    .optional()
    .describe('Ids of rows of ours that do not belong in this lesson'),
  kit: z.array(sentence).max(20).optional().describe('More to bring'),
  talk: z
    .array(z.strictObject({ ...known, ask: sentence, argue: sentence }))
    .max(20)
    .optional()
    .describe('Questions to talk about, and what is argued'),
  misconceptions: z
    .array(z.strictObject({ ...known, thought: sentence, reply: sentence }))
    .max(20)
    .optional()
    .describe('Mistaken ideas, and what to answer'),
  adaptations: z
    .array(z.strictObject({ ...known, for: sentence, do: sentence }))
    .max(20)
    .optional()
    .describe('What to change, and for whom'),
});

export type WrittenNotes = z.output<typeof lessonNotes>;
