import { catalogues } from '../../shared/words/index.ts';

const words = catalogues.en.site;

/** The papers of a lesson, in the order they are wanted. */
export const papers = [
  { path: 'teacher-notes', name: words.teacherNotes },
  { path: 'cards', name: words.cards },
  { path: 'pupil-sheet', name: words.pupilSheet },
  { path: 'answers', name: words.answers },
  { path: 'safety', name: catalogues.en.safetyPapers.safety },
  { path: 'risk-assessment', name: catalogues.en.safetyPapers.assessment },
] as const;
