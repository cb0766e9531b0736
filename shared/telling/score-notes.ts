import type { Activity, KindName } from '../activities/index.ts';
import { catalogues } from '../words/index.ts';

const words = catalogues.en.site;

const notes: { readonly [K in KindName]: readonly string[] } = {
  compare: [words.notesScoreCompare],
  barter: [catalogues.en.barterPaper.notesScore],
  estimate: [catalogues.en.estimatePapers.notesScore],
  handle: [catalogues.en.handlePapers.notesScore],
  order: [words.notesScoreOrder],
  sort: [words.notesScore, words.notesPicked],
  talk: [catalogues.en.talk.notesScore],
};

/** What the scores of a lesson say, for the teacher: a paragraph or two for each kind in it, once. */
export const scoreNotes = (activities: readonly Activity[]): readonly string[] => [
  ...new Set(activities.flatMap(({ kind }) => notes[kind])),
];
