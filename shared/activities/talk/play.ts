import * as z from 'zod';

const hands = z.record(z.string(), z.int().min(0).max(99));

/** Where a pupil, a pair or a class stood. Hands by the id of what they went up for; 1 for one pupil or pair. */
export const talkPlay = z.strictObject({
  activity: z.string(),
  /** Where they stood before the voices were heard. */
  before: hands.optional(),
  after: hands.optional(),
  /** What would change their mind. */
  weighs: hands.optional(),
});

export type TalkPlay = z.output<typeof talkPlay>;
