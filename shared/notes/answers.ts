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
export function answerBlocks(sheet: Sheet): readonly NotesBlock[] | null {
  switch (sheet.part) {
    case 'answers':
      return findAnswers(sheet);
    case 'step-answers':
      return stepAnswers(sheet);
    case 'compare-answers':
      return compareBlocks(sheet);
    case 'chain-answer':
      return chainBlocks(sheet);
    case 'class-answer':
      return classBlocks(sheet);
    case 'estimate-answer':
      return estimateBlocks(sheet);
    case 'handle-notes':
    case 'talk-notes':
      return unscoredBlocks(sheet);
    case 'cards':
    case 'compare-sheet':
    case 'estimate-sheet':
    case 'estimate-tally':
    case 'handle-sheet':
    case 'ledger':
    case 'pupil-sheet':
    case 'step-cards':
    case 'step-line':
    case 'talk-sheet':
    case 'trader-cards':
    case 'want-cards':
      return null;
    default:
      return sheet satisfies never;
  }
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
