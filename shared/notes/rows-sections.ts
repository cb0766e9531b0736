import type { Plan } from '../compile/index.ts';
import { isYounger, type GlossaryWord } from '../glossary/index.ts';
import { statusWords } from '../telling/status-words.ts';
import type { NotesRow } from '../library/index.ts';
import { catalogues, say } from '../words/index.ts';
import { cell, quiet, text, type NotesBlock, type NotesCell, type NotesSection } from './blocks.ts';
import type { Chosen, ChosenRows } from './choose-rows.ts';
import type { Cited } from './cited.ts';
import { plainText } from './lesson-texts.ts';

const words = catalogues.en.notes;

/** The words of the trade the lesson uses, as its bands are told them: one way, or two where it has both ages. */
export function wordsSection(plan: Plan, used: readonly GlossaryWord[]): readonly NotesSection[] {
  if (used.length === 0) return [];
  const hasYounger = plan.bands.some((band) => isYounger(band));
  const hasBoth = hasYounger && plan.bands.some((band) => !isYounger(band));
  const terms = used.map(({ word, younger, older }) => ({
    term: word,
    means: hasYounger ? younger : older,
    ...(hasBoth ? { older } : {}),
  }));
  const marks = [...new Set(used.map(({ status }) => statusWords(status)))].join('; ');
  return [
    {
      id: 'words',
      title: words.wordsTitle,
      blocks: [
        ...(hasBoth ? [quiet(words.wordsBoth)] : []),
        { block: 'terms', terms },
        quiet(say(words.wordsNote, { status: marks })),
      ],
    },
  ];
}

/** A cell with its mark under it; what is common practice carries none, and a line under the table says so. */
const marked = (said: string, row: Chosen<NotesRow>, cited: Cited): NotesCell =>
  cell(said, row.status === 'CP' && row.from === null ? [] : [cited.markOf(row)]);

/** A table of pairs, the second with its mark. */
function pairs<Row extends Chosen<NotesRow>>(
  heads: readonly [string, string],
  rows: readonly Row[],
  pairOf: (row: Row) => readonly [string, string],
  cited: Cited,
): readonly NotesBlock[] {
  const hasUnmarked = rows.some(({ status, from }) => status === 'CP' && from === null);
  return [
    {
      block: 'table',
      heads,
      rows: rows.map((row) => {
        const [first, second] = pairOf(row);
        return [cell(first), marked(second, row, cited)];
      }),
    },
    ...(hasUnmarked ? [quiet(words.unmarked)] : []),
  ];
}

/** Questions to talk about, the lesson's own first, with what is argued. */
export function talkSection(plan: Plan, rows: ChosenRows['talk'], cited: Cited): readonly NotesSection[] {
  const last = plan.parts.at(-1);
  const own = last?.part === 'prose' && plan.parts.length > 1 ? plainText(last.html) : '';
  if (own === '' && rows.length === 0) return [];
  return [
    {
      id: 'talk',
      title: words.talkTitle,
      blocks: [
        ...(own === '' ? [] : [text(say(words.talkOwn, { own }))]),
        ...(rows.length === 0
          ? []
          : [
              text(words.talkLead),
              ...pairs([words.talkAsk, words.talkArgue], rows, (row) => [row.ask, row.argue], cited),
            ]),
      ],
    },
  ];
}

/** Mistaken ideas that are often met, with replies. */
export function mistakenSection(rows: ChosenRows['misconceptions'], cited: Cited): readonly NotesSection[] {
  if (rows.length === 0) return [];
  const heads = [words.mistakenThought, words.mistakenReply] as const;
  const blocks = pairs(heads, rows, (row) => [row.thought, row.reply], cited);
  return [{ id: 'mistaken', title: words.mistakenTitle, blocks }];
}

/** What to change so that everyone can take part. */
export function adaptationsSection(rows: ChosenRows['adaptations'], cited: Cited): readonly NotesSection[] {
  if (rows.length === 0) return [];
  const blocks = pairs([words.adaptFor, words.adaptDo], rows, (row) => [row.for, row.do], cited);
  return [{ id: 'adaptations', title: words.adaptTitle, blocks: [text(words.adaptLead), ...blocks] }];
}
