import { CARD_PARTS, PUPIL_PARTS, sheetsOf, type Sheet } from '../../shared/activities/index.ts';
import type { Plan } from '../../shared/compile/index.ts';
import { catalogues } from '../../shared/words/index.ts';

const words = catalogues.en.site;
const { evaluation, kitWords, printPack, safetyPapers, stationWords } = catalogues.en;

export interface PaperOfLesson {
  readonly path: string;
  readonly name: string;
  /** Whose words the standing caution takes; safety papers have a caution of their own. */
  readonly caution: 'teacher' | 'pupil' | 'own';
  readonly whom: string;
  readonly copies: string;
  /** Left out of a pack where a lesson makes none of these; none are asked for where it is not said. */
  readonly needs?: readonly Sheet['part'][];
}

/** The papers of a lesson, in the order they are wanted. */
export const papers = [
  {
    path: 'teacher-notes',
    name: words.teacherNotes,
    caution: 'teacher',
    whom: printPack.whomTeacher,
    copies: printPack.copiesOne,
  },
  {
    path: 'pupil-sheet',
    name: words.pupilSheet,
    caution: 'pupil',
    whom: printPack.whomPupils,
    copies: printPack.copiesEach,
    needs: PUPIL_PARTS,
  },
  {
    path: 'cards',
    name: words.cards,
    caution: 'pupil',
    whom: printPack.whomPupils,
    copies: printPack.copiesPair,
    needs: CARD_PARTS,
  },
  {
    path: 'answers',
    name: words.answers,
    caution: 'teacher',
    whom: printPack.whomLead,
    copies: printPack.copiesAdult,
  },
  {
    path: 'safety',
    name: safetyPapers.safety,
    caution: 'own',
    whom: printPack.whomEverybody,
    copies: printPack.copiesAdult,
  },
  {
    path: 'risk-assessment',
    name: safetyPapers.assessment,
    caution: 'own',
    whom: printPack.whomResponsible,
    copies: printPack.copiesOne,
  },
  {
    path: 'station-cards',
    name: stationWords.cards,
    caution: 'teacher',
    whom: printPack.whomHelpers,
    copies: printPack.copiesStation,
  },
  {
    path: 'signs',
    name: stationWords.signs,
    caution: 'teacher',
    whom: printPack.whomEverybody,
    copies: printPack.copiesOne,
  },
  {
    path: 'kit-list',
    name: kitWords.title,
    caution: 'teacher',
    whom: printPack.whomLead,
    copies: printPack.copiesOne,
  },
  {
    path: 'evaluation',
    name: evaluation.title,
    caution: 'pupil',
    whom: printPack.whomEvaluation,
    copies: printPack.copiesEach,
  },
] as const satisfies readonly PaperOfLesson[];

export type Paper = (typeof papers)[number];

/** All of them in one document. */
export const PACK = { path: 'print-pack', name: printPack.pack } as const;

/** What stands first in a pack. */
export const CONTENTS = { path: 'contents', name: printPack.contents } as const;

/** The papers a lesson's pack holds: all but those that would say only that there is nothing. */
export function papersOf(plan: Plan): readonly Paper[] {
  const made = new Set(plan.activities.flatMap(sheetsOf).map(({ part }) => part));
  return papers.filter((paper) => !('needs' in paper) || paper.needs.some((part) => made.has(part)));
}

/** The parts of a pack, in the order of its pages. */
export const packParts = (plan: Plan): readonly { readonly path: string; readonly name: string }[] => [
  CONTENTS,
  ...papersOf(plan),
];
