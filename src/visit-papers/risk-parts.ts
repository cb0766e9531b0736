import type { Plan } from '../../shared/compile/index.ts';
import type { Library } from '../../shared/library/index.ts';
import { riskDraft } from '../../shared/safety/index.ts';
import { lessonSafety } from '../../shared/telling/lesson-safety.ts';
import { catalogues, draftHead, say, signLines } from '../../shared/words/index.ts';
import type { PrintBlock, PrintPart } from '../printing/print-view.ts';
import { hazardSaid, safetyFirst, safetySources, section, straight, text } from './paper-parts.ts';

const words = catalogues.en.safetyPapers;
/** Hazards do not hang on how many come: any class will do. */
const A_CLASS = 30;
/** Blanks that take sentences stand side by side; marks, names and dates stand under one another. */
const SENTENCES = ['in-place', 'further'];

const form = (names: readonly string[]): PrintBlock => ({ block: 'form', names, blank: words.blank });

/** The risk assessment draft: what we know is filled in, what only the responsible person knows is left to complete. */
export function riskParts(plan: Plan, library: Library): readonly PrintPart[] {
  const { safety } = library;
  const { hazards } = lessonSafety(plan, library, A_CLASS);
  const { blankRows } = riskDraft(safety, { hazards });
  const { columns } = safety.assessment;
  const [hazard, who, usual] = columns;
  const blanks = columns.filter(({ fill }) => fill === 'blank');
  return [
    straight('first', [text(words.draft, 'strong'), ...safetyFirst(library), form(draftHead)]),
    section('hazards', words.hazardsTitle, [
      text(`${words.hazardsLead} ${words.siteRowsLead}`),
      {
        block: 'risk',
        heads: {
          hazard: hazard?.heading ?? '',
          usual: usual?.heading ?? '',
          wide: blanks.filter(({ id }) => SENTENCES.includes(id)).map(({ heading }) => heading),
          person: words.byPerson,
        },
        short: blanks.filter(({ id }) => !SENTENCES.includes(id)).map(({ heading }) => heading),
        hazards: hazards.map(hazardSaid).map((said) => ({
          ...said,
          who: `${who?.heading ?? ''}: ${said.who ?? ''}`,
        })),
        siteRows: Array.from({ length: blankRows }, (_, row) => say(words.siteRow, { number: row + 1 })),
        blank: words.blank,
      },
    ]),
    section(
      'sign',
      words.signTitle,
      [text(words.signRead), form(signLines), text(safety.caution.full)],
      'paper-section keeps',
    ),
    section('sources', words.marksTitle, safetySources(library, hazards)),
  ];
}
