import { CARD_PARTS, PUPIL_PARTS, sheetsOf, TABLE_PARTS, type Sheet } from '../../shared/activities/index.ts';
import type { Plan } from '../../shared/compile/index.ts';
import { catalogues } from '../../shared/words/index.ts';

const words = catalogues.en.site;
const { evaluation, handlePapers, kitWords, printPack, safetyPapers, stationWords } = catalogues.en;

export interface PaperOfLesson {
  readonly path: string;
  readonly name: string;
  /** Whose words the standing caution takes; safety papers have a caution of their own. */
  readonly caution: 'teacher' | 'pupil' | 'own';
  readonly whom: string;
  readonly copies: string;
  /** Left out of a pack where a lesson makes none of these; none are asked for where it is not said. */
  readonly needs?: readonly Sheet['part'][];
  /** A lesson that makes none of these has no page of it either; every lesson has one where it is not said. */
  readonly onlyWith?: readonly Sheet['part'][];
}

/** The papers of a lesson, in the order they are wanted. */
const papers = [
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
    path: 'helper-card',
    name: handlePapers.helperCard,
    caution: 'teacher',
    whom: printPack.whomHelpers,
    copies: printPack.copiesStation,
    onlyWith: TABLE_PARTS,
  },
  {
    path: 'table-poster',
    name: handlePapers.poster,
    caution: 'own',
    whom: printPack.whomPupils,
    copies: printPack.copiesStation,
    onlyWith: TABLE_PARTS,
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

/** The papers a lesson has pages of. */
export function pagesOf(plan: Plan): readonly Paper[] {
  const made = new Set(plan.activities.flatMap(sheetsOf).map(({ part }) => part));
  return papers.filter((paper) => !('onlyWith' in paper) || paper.onlyWith.some((part) => made.has(part)));
}

/** The papers a lesson's pack holds: all but those that would say only that there is nothing. */
export function papersOf(plan: Plan): readonly Paper[] {
  const made = new Set(plan.activities.flatMap(sheetsOf).map(({ part }) => part));
  return pagesOf(plan).filter((paper) => !('needs' in paper) || paper.needs.some((part) => made.has(part)));
}

/** The parts of a pack, in the order of its pages. */
export const packParts = (plan: Plan): readonly { readonly path: string; readonly name: string }[] => [
  CONTENTS,
  ...papersOf(plan),
];
