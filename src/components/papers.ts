import { handlingTables, type Plan } from '../../shared/compile/index.ts';
import { catalogues } from '../../shared/words/index.ts';

const words = catalogues.en.site;
const { handlePapers } = catalogues.en;

interface PaperOfLesson {
  readonly path: string;
  readonly name: string;
  /** Whose words the standing caution takes; safety papers have a caution of their own. */
  readonly caution: 'teacher' | 'pupil' | 'own';
  /** Left out where every lesson has it. */
  readonly isFor?: (plan: Plan) => boolean;
}

const hasTable = (plan: Plan): boolean => handlingTables(plan).length > 0;

/** Every paper there is, in the order they are wanted. */
export const papers: readonly PaperOfLesson[] = [
  { path: 'teacher-notes', name: words.teacherNotes, caution: 'teacher' },
  { path: 'cards', name: words.cards, caution: 'pupil' },
  { path: 'pupil-sheet', name: words.pupilSheet, caution: 'pupil' },
  { path: 'answers', name: words.answers, caution: 'teacher' },
  { path: 'helper-card', name: handlePapers.helperCard, caution: 'teacher', isFor: hasTable },
  { path: 'table-poster', name: handlePapers.poster, caution: 'own', isFor: hasTable },
  { path: 'safety', name: catalogues.en.safetyPapers.safety, caution: 'own' },
  { path: 'risk-assessment', name: catalogues.en.safetyPapers.assessment, caution: 'own' },
];

/** The papers of one lesson. */
export const papersOf = (plan: Plan): readonly PaperOfLesson[] =>
  papers.filter(({ isFor }) => isFor?.(plan) ?? true);
