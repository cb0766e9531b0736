import type { Sheet } from '../../../shared/activities/index.ts';
import type { Band } from '../../../shared/library/index.ts';
import { pieceWords } from '../../../shared/telling/handle-words.ts';
import { catalogues, say, wordsFor } from '../../../shared/words/index.ts';
import type { BlockView } from '../../player/papers/paper-view.ts';
import type { Drawings } from '../drawings.ts';

type SheetOf<Part extends Sheet['part']> = Extract<Sheet, { readonly part: Part }>;

const { site, barterPaper, handlePapers } = catalogues.en;

export const text = (words: string): BlockView => ({ block: 'text', text: words });
export const question = (words: string): BlockView => ({ block: 'text', text: words, look: 'question' });
export const room = (words: string): BlockView => ({ block: 'room', text: words });

/** A sort on a desk: the trays to lay cards on, or to write numbers in. */
export const traysSheet = (sheet: SheetOf<'pupil-sheet'>): readonly BlockView[] => [
  question(sheet.question),
  text(site.sheetHow),
  { block: 'numbers', numbers: sheet.numbers },
  { block: 'trays', trays: sheet.boxes },
  room(site.sheetWhy),
];

/** A line with a place for each step. */
export function stepLine(sheet: SheetOf<'step-line'>, band: Band): readonly BlockView[] {
  const words = wordsFor(catalogues.en.order, band);
  return [
    question(sheet.question ?? say(words.question)),
    text(say(words.paperLineHow)),
    {
      block: 'places',
      count: sheet.places,
      isDrawn: sheet.isDrawn,
      ends: [say(words.paperStart), say(words.paperEnd)],
    },
    room(say(words.paperWhy)),
  ];
}

/** A list of swaps to be written as they are made. */
export const ledger = (sheet: SheetOf<'ledger'>): readonly BlockView[] => [
  question(sheet.question),
  text(`${say(barterPaper.ledgerStart, { things: sheet.begins.join(', ') })} ${barterPaper.ledgerHow}`),
  {
    block: 'blanks',
    look: 'ledger',
    wide: catalogues.en.notes.wideTable,
    heads: [
      barterPaper.ledgerNumber,
      barterPaper.ledgerWith,
      barterPaper.ledgerGave,
      barterPaper.ledgerTook,
      barterPaper.ledgerWhy,
    ],
    isFirstUnseen: true,
    rows: Array.from({ length: sheet.rows }, (_, index) => ({
      name: String(index + 1),
      cells: ['', '', '', ''],
    })),
  },
  room(barterPaper.ledgerEnd),
];

/** What a pupil began and ended with, where a whole class swaps. */
export const classSheet = (sheet: SheetOf<'class-answer'>): readonly BlockView[] => [
  question(sheet.question),
  text(barterPaper.sheetHow),
  {
    block: 'blanks',
    look: 'ledger',
    heads: [barterPaper.ledgerNumber, barterPaper.sheetThing, barterPaper.sheetMatters],
    isFirstUnseen: true,
    rows: [barterPaper.sheetBegan, barterPaper.sheetNow, barterPaper.sheetGain].map((name) => ({
      name,
      cells: ['', ''],
    })),
  },
  room(barterPaper.sheetWhy),
];

/** Pieces in the hand: what to look, feel and listen for, and room to draw. */
export function piecesSheet(
  sheet: SheetOf<'handle-sheet'>,
  band: Band,
  drawings: Drawings,
): readonly BlockView[] {
  const words = wordsFor(catalogues.en.handle, band);
  const senses = { look: words.look, feel: words.feel, listen: words.listen };
  const asked = sheet.question ?? say(words.question);
  return [
    ...(asked === sheet.title ? [] : [question(asked)]),
    text(handlePapers.sheetHow),
    {
      block: 'pieces',
      draw: handlePapers.sheetDraw,
      pieces: sheet.pieces.map((piece) => ({
        plain: piece.plain,
        drawn: drawings.find(piece.drawing, 'face'),
        lies: pieceWords(piece).lies,
        senses: piece.prompts.map(({ sense, says }) => ({
          name: say(senses[sense]),
          says: says[0]?.words ?? '',
        })),
      })),
    },
    room(handlePapers.sheetAsk),
  ];
}

/** A question without a right answer: where one stands before and after. */
export function talkSheet(sheet: SheetOf<'talk-sheet'>, band: Band): readonly BlockView[] {
  const words = wordsFor(catalogues.en.talk, band);
  const stances = sheet.stances.map((stance) => stance.words);
  const standing = (how: string): readonly BlockView[] =>
    stances.length === 0 ? [] : [text(how), { block: 'ticks', words: stances }];
  return [
    ...(sheet.question === sheet.title ? [] : [question(sheet.question)]),
    ...standing(say(words.sheetBefore)),
    { block: 'heading', text: say(words.voicesTitle) },
    { block: 'voices', voices: sheet.voices.map(({ who, says }) => ({ who, says })) },
    { block: 'heading', text: say(words.evidenceTitle) },
    { block: 'ticks', words: sheet.evidence.map((evidence) => evidence.words) },
    ...standing(say(words.sheetAfter)),
    room(say(words.sheetWhy)),
  ];
}
