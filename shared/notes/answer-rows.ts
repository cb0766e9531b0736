import type { Sheet } from '../activities/index.ts';
import { freeSentence, quotedList } from '../telling/free-sentence.ts';
import { catalogues, say, wordsFor } from '../words/index.ts';
import { cell, heading, list, quiet, text, type NotesBlock } from './blocks.ts';

const { site } = catalogues.en;

/** Finds with their answers and reasons. */
export function findAnswers(sheet: Extract<Sheet, { part: 'answers' }>): readonly NotesBlock[] {
  const rows = sheet.rows.map((row) => [
    { text: row.name, more: [`△ ${row.number}`], picture: { find: row.drawing } },
    cell(row.answer),
    cell(
      row.note === null ? row.because : `${row.because} (${row.note})`,
      row.also.map(({ answer, because }) => say(site.notesAlso, { answer, because })),
    ),
  ]);
  return [
    ...(sheet.isOpen ? [text(site.ownTraysAnswer)] : []),
    { block: 'table', heads: [site.notesFind, site.notesAnswer, site.notesWhy], rows },
  ];
}

/** Steps in one right order, their room in the line, and which may change places. */
export function stepAnswers(sheet: Extract<Sheet, { part: 'step-answers' }>): readonly NotesBlock[] {
  const words = wordsFor(catalogues.en.order, '14-16');
  const { validOrders } = sheet;
  const orders =
    validOrders === null ? words.ordersMany : validOrders === 1 ? words.ordersAlone : words.orders;
  const rows = sheet.rows.map((row) => [
    {
      text: `${row.letter}. ${row.name}`,
      ...(row.drawing === null ? {} : { picture: { step: row.drawing } }),
    },
    cell(
      say(row.earliest === row.latest ? words.roomOne : words.room, {
        earliest: row.earliest,
        latest: row.latest,
      }),
      [row.after.length === 0 ? say(words.anytime) : say(words.after, { steps: quotedList(row.after) })],
    ),
    cell(row.because ?? ''),
  ]);
  return [
    { block: 'table', heads: [say(words.colCard), say(words.colRecord), say(words.colHow)], rows },
    text(say(orders, { count: validOrders ?? 0 })),
    heading(say(words.freeTitle)),
    sheet.free.length === 0
      ? text(say(words.freeNone))
      : list(sheet.free.map((group) => freeSentence(words, group))),
    quiet(say(words.sourceLine, { source: sheet.source })),
  ];
}
