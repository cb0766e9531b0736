import { sheetsOf, type Sheet } from '../activities/index.ts';
import type { Plan } from '../compile/index.ts';
import { catalogues } from '../words/index.ts';
import { findAnswers, stepAnswers } from './answer-rows.ts';
import { chainBlocks, classBlocks } from './barter-blocks.ts';
import type { NotesBlock, NotesSection } from './blocks.ts';
import { compareBlocks } from './compare-blocks.ts';
import { estimateBlocks } from './estimate-blocks.ts';
import { handleBlocks } from './handle-blocks.ts';
import { talkBlocks } from './talk-blocks.ts';

/** The blocks of a sheet of what has no right answer; null for every other sheet. */
export function unscoredBlocks(sheet: Sheet): readonly NotesBlock[] | null {
  if (sheet.part === 'handle-notes') return handleBlocks(sheet);
  return sheet.part === 'talk-notes' ? talkBlocks(sheet) : null;
}

/** The blocks of a sheet that holds answers; null for every other sheet. */
function answerBlocks(sheet: Sheet): readonly NotesBlock[] | null {
  if (sheet.part === 'answers') return findAnswers(sheet);
  if (sheet.part === 'step-answers') return stepAnswers(sheet);
  if (sheet.part === 'compare-answers') return compareBlocks(sheet);
  if (sheet.part === 'chain-answer') return chainBlocks(sheet);
  if (sheet.part === 'class-answer') return classBlocks(sheet);
  if (sheet.part === 'estimate-answer') return estimateBlocks(sheet);
  return unscoredBlocks(sheet);
}

/** Each activity's answers with their reasons, in the order of the lesson. */
export const answerSections = (plan: Plan): readonly NotesSection[] =>
  plan.activities.flatMap((activity) =>
    sheetsOf(activity).flatMap((sheet): readonly NotesSection[] => {
      const blocks = answerBlocks(sheet);
      return blocks === null
        ? []
        : [
            {
              id: `answers-${activity.id}`,
              title: sheet.title,
              ...(unscoredBlocks(sheet) === null ? { aside: catalogues.en.site.notesAnswers } : {}),
              blocks,
            },
          ];
    }),
  );
