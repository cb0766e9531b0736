import type { Sheet } from '../activities/index.ts';
import { voiceFrom } from '../telling/talk-words.ts';
import { catalogues } from '../words/index.ts';
import { cell, heading, list, text, type NotesBlock } from './blocks.ts';

const words = catalogues.en.talk;

/** A talk for whoever leads it: stances to count hands for, each voice with where it comes from, and the evidence. */
export function talkBlocks(sheet: Extract<Sheet, { part: 'talk-notes' }>): readonly NotesBlock[] {
  const stances = sheet.stances.map((stance) => [cell(stance.words), cell(''), cell('')]);
  return [
    { block: 'text', text: sheet.question, isStrong: true },
    text(words.notesLead),
    ...(stances.length === 0
      ? []
      : [
          {
            block: 'table',
            heads: [words.colStance, words.colBefore, words.colAfter],
            rows: stances,
            narrow: [1, 2],
          } as const,
        ]),
    {
      block: 'table',
      heads: [words.colWho, words.voicesTitle.otherwise],
      rows: sheet.voices.map((voice) => [cell(voice.who), cell(voice.says, [voiceFrom(voice)])]),
    },
    heading(words.evidenceTitle.otherwise),
    list(sheet.evidence.map((evidence) => evidence.words)),
  ];
}
