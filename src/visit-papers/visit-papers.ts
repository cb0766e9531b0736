import type { Plan } from '../../shared/compile/index.ts';
import type { Library } from '../../shared/library/index.ts';
import { cautionWords } from '../../shared/telling/caution-words.ts';
import { lessonParticulars } from '../../shared/telling/lesson-particulars.ts';
import { catalogues } from '../../shared/words/index.ts';
import { folioCss } from '../components/folio-css.ts';
import { CONTENTS, papersOf, type Paper } from '../components/papers.ts';
import { newDrawings, type Drawings } from '../packs/drawings.ts';
import { lessonPapers } from '../packs/papers/lesson-papers.ts';
import type { PrintedPaper, PrintedVisit, PrintPart, VisitPaper } from '../printing/print-view.ts';
import { answerParts } from './answer-parts.ts';
import { cardParts } from './card-parts.ts';
import { contentsParts } from './contents-parts.ts';
import { evaluationParts } from './evaluation-parts.ts';
import { kitParts } from './kit-parts.ts';
import { riskParts } from './risk-parts.ts';
import { safetyParts } from './safety-parts.ts';
import { signsParts } from './signs-parts.ts';
import { stationParts } from './station-parts.ts';
import { helperParts, posterParts } from './table-parts.ts';

interface Making {
  readonly plan: Plan;
  readonly library: Library;
  readonly drawings: Drawings;
}

/** The papers that a pack has no room for, by path; those of a pack are made as a pack makes them. */
const beyond: {
  readonly [Path in Exclude<Paper['path'], 'teacher-notes' | 'pupil-sheet' | 'cards'>]: (
    making: Making,
  ) => readonly PrintPart[];
} = {
  answers: ({ plan, drawings }) => answerParts(plan, drawings),
  'helper-card': ({ plan, library, drawings }) => helperParts(plan, library, drawings),
  'table-poster': ({ plan, library, drawings }) => posterParts(plan, library, drawings),
  safety: ({ plan, library }) => safetyParts(plan, library),
  'risk-assessment': ({ plan, library }) => riskParts(plan, library),
  'station-cards': ({ plan, library }) => stationParts(plan, library),
  signs: ({ plan, library }) => signsParts(plan, library),
  'kit-list': ({ plan, library }) => kitParts(plan, library),
  evaluation: ({ plan }) => evaluationParts(plan),
};

function cautionOf({ plan, library }: Making, whose: Paper['caution']): VisitPaper['caution'] {
  if (whose === 'own') return null;
  const words = cautionWords(library.safety, plan, { isForTeacher: whose === 'teacher', isPaper: true });
  return words ?? { title: null, text: library.safety.caution.neverLine };
}

/**
 * All papers of a lesson as plain data, as the site's pages have them: those of its pack, and those a pack has no room
 * for. The contents stand first.
 */
export function visitPapers(plan: Plan, library: Library): PrintedVisit {
  const drawings = newDrawings();
  const making: Making = { plan, library, drawings };
  const packed = lessonPapers(plan, library, drawings).papers;
  const { title } = plan;
  const papers = papersOf(plan).map((listed): PrintedPaper => {
    const { path, name } = listed;
    const inPack = packed.find((paper) => paper.path === path);
    if (inPack !== undefined && path !== 'cards') return { is: 'pack', paper: inPack };
    const caution = cautionOf(making, listed.caution);
    if (inPack !== undefined)
      return { is: 'beyond', paper: { path, name, caution, parts: cardParts(inPack, plan.site.name) } };
    // A paper that is not in a pack is one of those beyond.
    const parts = beyond[path as keyof typeof beyond](making);
    return { is: 'beyond', paper: { path, name, caution, parts } };
  });
  const { path, name } = CONTENTS;
  const contents: VisitPaper = {
    path,
    name,
    caution: cautionOf(making, 'teacher'),
    parts: contentsParts(plan),
  };
  const all: readonly PrintedPaper[] = [{ is: 'beyond', paper: contents }, ...papers];
  return {
    language: plan.language,
    head: {
      title,
      site: plan.site.name,
      invented: plan.site.status === 'invented' ? catalogues.en.site.invented : null,
      particulars: lessonParticulars(plan),
    },
    date: catalogues.en.site.dateBlank,
    drawings: drawings.all(),
    papers: all,
    together: catalogues.en.printPack.pack,
    feet: Object.fromEntries(all.map(({ paper }) => [paper.path, folioCss(title, [paper])])),
    feetTogether: folioCss(
      title,
      all.map(({ paper }) => paper),
    ),
  };
}
