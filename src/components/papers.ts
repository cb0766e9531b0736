import { catalogues } from '../../shared/words/index.ts';

const words = catalogues.en.site;

export interface PaperOfLesson {
  readonly path: string;
  readonly name: string;
  /** Whose words the standing caution takes; safety papers have a caution of their own. */
  readonly caution: 'teacher' | 'pupil' | 'own';
}

/** The papers of a lesson, in the order they are wanted. */
export const papers = [
  { path: 'teacher-notes', name: words.teacherNotes, caution: 'teacher' },
  { path: 'cards', name: words.cards, caution: 'pupil' },
  { path: 'pupil-sheet', name: words.pupilSheet, caution: 'pupil' },
  { path: 'answers', name: words.answers, caution: 'teacher' },
  { path: 'safety', name: catalogues.en.safetyPapers.safety, caution: 'own' },
  { path: 'risk-assessment', name: catalogues.en.safetyPapers.assessment, caution: 'own' },
] as const satisfies readonly PaperOfLesson[];

export type Paper = (typeof papers)[number];
