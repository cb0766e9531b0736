import { sheetsOf, type Sheet } from '../../shared/activities/index.ts';
import type { Plan } from '../../shared/compile/index.ts';
import { answerBlocks } from '../../shared/notes/index.ts';
import { catalogues } from '../../shared/words/index.ts';
import { firstStrips } from '../components/estimate-first-strips.ts';
import type { Drawings } from '../packs/drawings.ts';
import { howOf, stripOf, subjectOf } from '../packs/estimate-parts.ts';
import { blockOfNotes } from '../packs/papers/notes-blocks.ts';
import type { PrintBlock, PrintPart } from '../printing/print-view.ts';
import { heading, section, text } from './paper-parts.ts';

type EstimateSheet = Extract<Sheet, { readonly part: 'estimate-answer' }>;

/** What was asked, where the answers themselves do not say. */
function asked(sheet: Sheet, drawings: Drawings): readonly PrintBlock[] {
  if (sheet.part === 'answers')
    return [text(sheet.isOpen ? catalogues.en.site.ownTraysAnswer : sheet.question)];
  return sheet.part === 'estimate-answer' ? [{ block: 'subject', ...subjectOf(sheet, drawings) }] : [];
}

/** The figures an estimate stands on, with the works they come from, and the strip of its work. */
function how(sheet: EstimateSheet, stripId: string | null): readonly PrintBlock[] {
  const { title, heads, rows, trials, works } = howOf(sheet);
  return [
    heading(title),
    {
      block: 'grid',
      look: 'used-figures',
      heads,
      rows: rows.map(({ label, value, status, works: numbers }) => [
        { text: label },
        { text: value, isNumber: true },
        { text: status },
        { text: numbers, isNumber: true },
      ]),
    },
    { block: 'list', items: trials },
    { block: 'list', items: works, isOrdered: true },
    ...(sheet.strip === null || stripId === null
      ? []
      : [{ block: 'strip', id: stripId, ...stripOf(sheet.strip) } as const]),
  ];
}

/** The answers of every activity with their reasons and the figures they stand on. */
export function answerParts(plan: Plan, drawings: Drawings): readonly PrintPart[] {
  const sheets = plan.activities.flatMap(sheetsOf);
  const strips = firstStrips(sheets, 'estimate-answer');
  return sheets.flatMap((sheet, index): readonly PrintPart[] => {
    const blocks = answerBlocks(sheet);
    if (blocks === null) return [];
    const id = `answer-${index + 1}`;
    return [
      section(id, sheet.title, [
        ...asked(sheet, drawings),
        ...blocks.map((block) => blockOfNotes(block, drawings)),
        ...(sheet.part === 'estimate-answer' ? how(sheet, strips.has(sheet) ? `${id}-strip` : null) : []),
      ]),
    ];
  });
}
