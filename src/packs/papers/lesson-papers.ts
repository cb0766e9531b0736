import { sheetsOf, type Sheet } from '../../../shared/activities/index.ts';
import type { Plan } from '../../../shared/compile/index.ts';
import { define } from '../../../shared/glossary/index.ts';
import { youngest, type Library } from '../../../shared/library/index.ts';
import { teacherNotes, wordsBefore } from '../../../shared/notes/index.ts';
import { cautionWords } from '../../../shared/telling/caution-words.ts';
import { packWords } from '../../../shared/words/en/pack.ts';
import { catalogues } from '../../../shared/words/index.ts';
import { firstStrips } from '../../components/estimate-first-strips.ts';
import type { PapersView, PaperView, SectionView } from '../../player/papers/paper-view.ts';
import type { Drawings } from '../drawings.ts';
import { blockOfNotes } from './notes-blocks.ts';
import { placesOf } from './sheet-places.ts';

const { site, notes, printPack } = catalogues.en;
/** More words at once than this are a list to learn, not help at hand. ASM. */
const MOST_WORDS = 10;

function cautionOf(plan: Plan, { safety }: Library, isForTeacher: boolean): PaperView['caution'] {
  return (
    cautionWords(safety, plan, { isForTeacher, isPaper: true }) ?? {
      title: null,
      text: safety.caution.neverLine,
    }
  );
}

const notesPaper = (plan: Plan, library: Library, drawings: Drawings): PaperView => ({
  path: 'teacher-notes',
  name: site.teacherNotes,
  whom: `${printPack.whomTeacher}: ${printPack.copiesOne}`,
  caution: cautionOf(plan, library, true),
  sections: teacherNotes(plan, library).sections.map(({ blocks, ...section }) => ({
    ...section,
    blocks: blocks.map((block) => blockOfNotes(block, drawings)),
  })),
});

/** The words a pupil meets before answering, where pupils read alone. */
function wordsSection(plan: Plan, library: Library): readonly SectionView[] {
  const band = youngest(plan.bands);
  const readsAlone = library.bands.find((limits) => limits.band === band)?.readsAlone ?? true;
  const used = readsAlone ? wordsBefore(plan, library).slice(0, MOST_WORDS) : [];
  if (used.length === 0) return [];
  const terms = used.map((word) => ({ term: word.word, means: define(word, band) }));
  return [{ id: 'words', title: notes.wordsSheet, blocks: [{ block: 'terms', terms }] }];
}

interface Sorted {
  readonly cards: readonly SectionView[];
  readonly pupils: readonly SectionView[];
}

/** The sheets of a lesson, as sections of the paper each belongs to. */
function sectionsOf(plan: Plan, drawings: Drawings): Sorted {
  const sheets: readonly Sheet[] = plan.activities.flatMap(sheetsOf);
  const strips = firstStrips(sheets, 'estimate-sheet');
  const band = youngest(plan.bands);
  const placed = sheets.map((sheet, index) => {
    const id = `sheet-${index + 1}`;
    const stripId = strips.has(sheet) ? `${id}-strip` : null;
    const { title } = sheet;
    return { id, title, ...placesOf(sheet, { band, drawings, stripId }) };
  });
  return {
    cards: placed.flatMap(({ id, title, cards }) =>
      cards === undefined ? [] : [{ id, title, blocks: cards }],
    ),
    pupils: placed.flatMap(({ id, title, aside, pupils }) =>
      pupils === undefined
        ? []
        : [{ id, title, isSheet: true, ...(aside === undefined ? {} : { aside }), blocks: pupils }],
    ),
  };
}

/**
 * The papers of a lesson for a pack: what a lead prints where there is no network.
 *
 * @param drawings What the pack has drawn already; the papers point to it, and put in what they need beside it.
 */
export function lessonPapers(plan: Plan, library: Library, drawings: Drawings): PapersView {
  const { cards, pupils } = sectionsOf(plan, drawings);
  const caution = cautionOf(plan, library, false);
  const papers: readonly PaperView[] = [
    notesPaper(plan, library, drawings),
    {
      path: 'pupil-sheet',
      name: site.pupilSheet,
      whom: `${printPack.whomPupils}: ${printPack.copiesEach}`,
      caution,
      sections: [...pupils, ...wordsSection(plan, library)],
    },
    {
      path: 'cards',
      name: site.cards,
      whom: `${printPack.whomPupils}: ${printPack.copiesPair}`,
      caution,
      sections: cards,
    },
  ];
  return {
    title: packWords.papersTitle,
    lead: packWords.papersLead,
    show: packWords.papersShow,
    hide: packWords.papersHide,
    print: packWords.papersPrint,
    large: `${printPack.large}: ${printPack.largeHow}`,
    date: site.dateBlank,
    papers: papers.filter(({ sections }) => sections.length > 0),
  };
}
