import { catalogues } from '../../shared/words/index.ts';
import { safetySheet } from '../../shared/words/en/safety-sheet.ts';

const words = catalogues.en.site;

interface PaperOfLesson {
  readonly path: string;
  readonly name: string;
  /** Whose words the standing caution takes. */
  readonly reader: 'teacher' | 'pupil';
  /** Safety papers say first what comes before them. */
  readonly isOfSafety?: boolean;
  /** Drafts are not valid as they are printed. */
  readonly isDraft?: boolean;
}

/** The papers of a lesson, in the order they are wanted. */
export const papers: readonly PaperOfLesson[] = [
  { path: 'teacher-notes', name: words.teacherNotes, reader: 'teacher' },
  { path: 'cards', name: words.cards, reader: 'pupil' },
  { path: 'pupil-sheet', name: words.pupilSheet, reader: 'pupil' },
  { path: 'answers', name: words.answers, reader: 'teacher' },
  { path: 'safety', name: safetySheet.safetySheet, reader: 'teacher', isOfSafety: true },
  {
    path: 'risk-assessment',
    name: safetySheet.riskDraft,
    reader: 'teacher',
    isOfSafety: true,
    isDraft: true,
  },
];
