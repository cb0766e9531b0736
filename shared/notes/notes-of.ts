import type { Plan } from '../compile/index.ts';
import type { Library } from '../library/index.ts';
import { cautionWords } from '../telling/caution-words.ts';
import { lessonParticulars } from '../telling/lesson-particulars.ts';
import { catalogues } from '../words/index.ts';
import { answerSections } from './answers.ts';
import type { NotesDocument } from './blocks.ts';
import { chooseRows } from './choose-rows.ts';
import { citing } from './cited.ts';
import { claimsSection, lastSections, siteSection } from './closing.ts';
import { lessonWords } from './lesson-words.ts';
import { minutesSection } from './minutes.ts';
import { jobSection, kitSection, safetySection } from './opening.ts';
import { adaptationsSection, mistakenSection, talkSection, wordsSection } from './rows-sections.ts';

const words = catalogues.en.site;

/**
 * The teacher notes of a lesson as plain data: a page and a text file are made from this and say the same.
 *
 * @param plan Of all bands, or narrowed to one.
 */
export function teacherNotes(plan: Plan, library: Library): NotesDocument {
  const used = lessonWords(plan, library);
  const rows = chooseRows(
    plan,
    library.notes,
    used.map(({ word }) => word),
  );
  const cited = citing(library.sources);
  const caution = cautionWords(library.safety, plan, { isForTeacher: true, isPaper: true });
  const isInvented = plan.site.status === 'invented';
  const sections = [
    jobSection(plan),
    minutesSection(plan),
    kitSection(plan, library, rows.kit),
    safetySection(plan, library),
    ...wordsSection(plan, used),
    siteSection(plan),
    ...answerSections(plan),
    ...mistakenSection(rows.misconceptions, cited),
    ...talkSection(plan, rows.talk, cited),
    ...adaptationsSection(rows.adaptations, cited),
    ...claimsSection(plan),
  ];
  return {
    title: plan.title,
    part: words.teacherNotes,
    site: isInvented ? `${plan.site.name} (${words.invented})` : plan.site.name,
    particulars: lessonParticulars(plan),
    caution: caution === null ? library.safety.caution.neverLine : `${caution.title} ${caution.text}`,
    // Works are numbered as rows are marked, so the list of them is made last.
    sections: [...sections, ...lastSections(plan, cited)],
  };
}
