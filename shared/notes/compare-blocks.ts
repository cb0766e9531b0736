import type { Sheet } from '../activities/index.ts';
import { chanceLine, doubtLines, likenessText, pitNumber, placeName } from '../telling/compare-words.ts';
import { siteLines } from '../telling/site-lines.ts';
import { catalogues, say, wordsFor } from '../words/index.ts';
import { cell, heading, list, text, type NotesBlock } from './blocks.ts';

type CompareSheet = Extract<Sheet, { readonly part: 'compare-answers' }>;
const words = wordsFor(catalogues.en.compare, '14-16');

function pairsTable({ pairs }: CompareSheet, most: number): NotesBlock {
  const rows = pairs.map((pair) => [
    cell(say(words.pairName, { first: pitNumber(pair.pits[0]), second: pitNumber(pair.pits[1]) })),
    cell(likenessText(pair.likeness, most)),
    cell(say(words[pair.record]), [chanceLine(words, pair.tally)]),
  ]);
  return {
    block: 'table',
    heads: [words.colPits, words.colAlike, words.colRecord].map((head) => say(head)),
    rows,
  };
}

function placesTable({ pits, rows: kinds }: CompareSheet): NotesBlock {
  const cuts = { pits: pits.map((id) => ({ cut: { id } })) };
  const [first = '', second = ''] = pits.map(pitNumber);
  const rows = kinds.map(({ name, drawing, counts, place }) => [
    { text: name, picture: { find: drawing } },
    cell(placeName(cuts, words, place ?? 'neither')),
    cell(say(words.countsLine, { first, second, inFirst: counts[0] ?? 0, inSecond: counts[1] ?? 0 })),
  ]);
  return {
    block: 'table',
    heads: [words.colKind, words.colRecord, words.colCounts].map((head) => say(head)),
    rows,
  };
}

/** Pits compared: the answers, what archaeologists make of it, why one may doubt it, and the site as a whole. */
export function compareBlocks(sheet: CompareSheet): readonly NotesBlock[] {
  const { reading, doubts, keeps, site, kindNames } = sheet;
  const most = sheet.by === 'brainerd-robinson' ? 200 : 1;
  const { seriation = null } = site ?? {};
  const order: readonly NotesBlock[] =
    seriation === null
      ? []
      : [
          text(say(words.siteOrder, { breaks: seriation.breaks })),
          {
            block: 'table',
            heads: ['', ...seriation.pits.map(pitNumber)],
            narrow: seriation.pits.map((_, index) => index + 1),
            rows: seriation.matrix.map((row, index) => [
              cell(pitNumber(seriation.pits[index])),
              ...row.map((value, column) => cell(index === column ? '–' : likenessText(value, most))),
            ]),
          },
        ];
  return [
    sheet.places === null ? pairsTable(sheet, most) : placesTable(sheet),
    ...(reading === null ? [] : [heading(say(words.readingTitle)), text(reading)]),
    heading(say(words.doubtsTitle)),
    list(doubtLines(words, doubts, keeps)),
    ...(site === null
      ? []
      : [
          heading(say(words.siteTitle)),
          list(siteLines(words, site, (kind) => kindNames[kind] ?? kind)),
          ...order,
        ]),
  ];
}
