import type { Sheet } from '../activities/index.ts';
import { pieceWords } from '../telling/handle-words.ts';
import { catalogues, say } from '../words/index.ts';
import { cell, quiet, text, type NotesBlock } from './blocks.ts';

const { handle, handlePapers: words } = catalogues.en;

/** The pieces of a table in the order of passing: what lies there, how near a child comes, what it tells and is asked. */
export function handleBlocks(sheet: Extract<Sheet, { part: 'handle-notes' }>): readonly NotesBlock[] {
  const rows = sheet.pieces.map((piece, index) => {
    const { lies, near } = pieceWords(piece);
    return [
      {
        text: say(words.numbered, { number: index + 1, name: piece.name }),
        more: [`${piece.material} △ ${piece.smallFind}`],
        picture: { find: piece.drawing },
      },
      cell(lies, [say(words.notesNearLine, { near, edge: piece.edge })]),
      cell(piece.note === null ? piece.sign : `${piece.sign} (${piece.note})`, [
        piece.prompts.flatMap(({ says }) => says.slice(0, 1).map((said) => said.words)).join(' '),
      ]),
    ];
  });
  return [
    text(words.notesLead),
    { block: 'table', heads: [words.notesPiece, words.notesNear, words.notesSays], rows },
    quiet(`${words.promptsMark} ${say(handle.signsSource, { source: sheet.signsSource })}`),
  ];
}
