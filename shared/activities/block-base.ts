import * as z from 'zod';

/** The keys every activity block may hold, whatever its kind. */
export const blockBase = {
  id: z
    .string()
    .regex(/^[a-z][a-z0-9-]{0,39}$/, 'small letters, digits and hyphens, a letter first, 40 at most')
    .optional()
    .describe('A name of its own, so that results still fit when blocks move'),
  title: z.string().min(1).max(120).describe('What pupils read above the activity'),
  minutes: z.int().min(1).max(120).describe('How long the activity takes, in minutes'),
  vouched: z
    .array(z.string().min(1))
    .max(20)
    .optional()
    .describe('What happens in the room that the file cannot show: group-talk, evidence-why'),
} as const;
