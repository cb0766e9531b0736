import * as z from 'zod';
import { blockBase } from '../../../shared/activities/block-base.ts';
import type { ActivityBase, PlayBase, ScoredKind, UnscoredKind } from '../../../shared/activities/kind.ts';
import { uniformBelow } from '../../../shared/chance/index.ts';

interface Count extends ActivityBase {
  readonly kind: 'count';
  readonly pit: string;
  readonly most: number;
  readonly finds: number;
}

interface CountPlay extends PlayBase {
  readonly said: number;
}

const countBlock = z.strictObject({ ...blockBase, pit: z.string(), most: z.int().min(2).max(200) });
type CountBlock = z.output<typeof countBlock>;

/** A kind that no lesson has: say how many finds a pit held. It stands for any kind that will be added. */
export const count: ScoredKind<CountBlock, Count, CountPlay> = {
  isScored: true,
  schema: countBlock,
  playSchema: z.strictObject({ activity: z.string(), said: z.int() }),
  compile: (id, block, { site }) => {
    const pit = site.pits.find((known) => known.id === block.pit);
    if (pit === undefined) {
      const words = { expected: 'a pit', received: block.pit, mend: 'write the id of a pit' };
      return { activity: null, faults: [{ code: 'find-unknown', grade: 'error', path: ['pit'], ...words }] };
    }
    const { title, minutes, most } = block;
    return {
      activity: { id, kind: 'count', title, minutes, pit: pit.id, most, finds: pit.finds.length },
      faults: [],
    };
  },
  score: (activity, { said }) => {
    const guess = 1 / activity.most;
    const agrees = said === activity.finds ? 1 : 0;
    return { score: (agrees - guess) / (1 - guess), guess, working: { said, finds: activity.finds } };
  },
  record: (activity) => ({ activity: activity.id, said: activity.finds }),
  guess: (activity, chance) => ({ activity: activity.id, said: 1 + uniformBelow(chance, activity.most) }),
  shows: () => [],
  paper: ({ title, most }) => [
    {
      part: 'pupil-sheet',
      title,
      question: 'How many finds?',
      boxes: [{ name: '', hint: `1 to ${most}` }],
      numbers: [],
    },
  ],
};

interface Wonder extends ActivityBase {
  readonly kind: 'wonder';
}

interface WonderPlay extends PlayBase {
  readonly asked: number;
}

const wonderBlock = z.strictObject({ ...blockBase });

/** A kind without a right answer: how many questions a group had. */
export const wonder: UnscoredKind<z.output<typeof wonderBlock>, Wonder, WonderPlay> = {
  isScored: false,
  schema: wonderBlock,
  playSchema: z.strictObject({ activity: z.string(), asked: z.int() }),
  compile: (id, { title, minutes }) => ({ activity: { id, kind: 'wonder', title, minutes }, faults: [] }),
  tell: (_activity, { asked }) => ({ asked }),
  sample: (activity, chance) => ({ activity: activity.id, asked: uniformBelow(chance, 9) }),
  shows: () => [],
  paper: ({ title }) => [{ part: 'cards', title, cards: [] }],
};
