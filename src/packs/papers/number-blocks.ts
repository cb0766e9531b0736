import type { Sheet } from '../../../shared/activities/index.ts';
import type { Band } from '../../../shared/library/index.ts';
import { pitNumber, placeName } from '../../../shared/telling/compare-words.ts';
import { unitWords } from '../../../shared/telling/estimate-unit.ts';
import { catalogues, say, tellNumber, wordsFor } from '../../../shared/words/index.ts';
import { marksOn, percentOf, type ShownLine } from '../../islands/line-scale.ts';
import type { BlockView } from '../../player/papers/paper-view.ts';
import { tallyOf } from '../compare-parts.ts';
import type { Drawings } from '../drawings.ts';
import { blankStripOf, subjectOf } from '../estimate-parts.ts';
import { question, room, text } from './pupil-blocks.ts';

type SheetOf<Part extends Sheet['part']> = Extract<Sheet, { readonly part: Part }>;

const words = catalogues.en.estimatePapers;
const told = catalogues.en.estimate;

const timeWords = (hours: number): string =>
  hours < 1
    ? say(told.minutesLong, { minutes: tellNumber(hours * 60) })
    : say(told.hoursLong, { hours: tellNumber(hours, 3) });

/** A line to mark by hand. */
const scaleOf = (line: ShownLine): BlockView => ({
  block: 'scale',
  marks: marksOn(line).map(({ value, isNumbered }) => ({
    x: percentOf(line, value),
    text: isNumbered ? tellNumber(value) : null,
    anchor: value <= line.from * 1.01 ? 'start' : value >= line.to * 0.99 ? 'end' : 'middle',
  })),
});

/**
 * An estimate to make by hand.
 *
 * @param stripId Names the empty strip in the page; null where another sheet of the lesson has the same.
 */
export const estimateSheet = (
  sheet: SheetOf<'estimate-sheet'>,
  stripId: string | null,
  drawings: Drawings,
): readonly BlockView[] => [
  question(sheet.question),
  { block: 'subject', ...subjectOf(sheet, drawings) },
  ...(sheet.choices.length === 0
    ? []
    : [text(words.paperChoose), { block: 'choices', words: sheet.choices } as const]),
  ...(sheet.line === null
    ? []
    : [
        text(sheet.isInterval ? words.paperInterval : words.paperMark),
        scaleOf(sheet.line),
        {
          block: 'text',
          look: 'small',
          text: `${unitWords(sheet.unit, 2)}. ${sheet.landmarks
            .map(({ label, hours }) => say(told.landmarkLine, { label, time: timeWords(hours) }))
            .join('; ')}`,
        } as const,
      ]),
  room(`${words.paperMine}:`),
  room(`${words.paperWhy}:`),
  ...(sheet.strip === null || stripId === null
    ? []
    : [{ block: 'strip', id: stripId, ...blankStripOf(sheet.strip) } as const]),
];

/** The hands of a class, counted by the lead. */
export function estimateTally(sheet: SheetOf<'estimate-tally'>): readonly BlockView[] {
  const bins = sheet.bins.map(({ from, to }) =>
    say(told.fromTo, { low: tellNumber(from), high: tellNumber(to), unit: unitWords(sheet.unit, to) }),
  );
  return [
    text(words.paperTallyHow),
    ...[sheet.choices, bins]
      .filter((names) => names.length > 0)
      .map((names): BlockView => ({
        block: 'blanks',
        look: 'answers tally',
        heads: [words.paperAnswerBins, words.paperHands],
        rows: [...names, words.paperMiddle].map((name) => ({ name, cells: [''] })),
      })),
    { block: 'text', look: 'small', text: words.paperMiddleDefinition },
  ];
}

/** Pits to compare: what each holds, and a table to mark. */
export function compareSheet(
  sheet: SheetOf<'compare-sheet'>,
  band: Band,
  drawings: Drawings,
): readonly BlockView[] {
  const compare = wordsFor(catalogues.en.compare, band);
  const { pits, rows, pairs, places } = sheet;
  const cuts = { pits: pits.map((id) => ({ cut: { id } })) };
  const tally: BlockView = { block: 'tally', ...tallyOf(pits, rows, drawings) };
  if (places !== null)
    return [
      question(sheet.question ?? say(compare.questionPlaces)),
      tally,
      text(say(compare.paperSheetPlaces)),
      {
        block: 'blanks',
        look: 'compare-ticks',
        wide: catalogues.en.notes.wideTable,
        heads: [say(compare.colKind), ...places.map((place) => placeName(cuts, compare, place))],
        rows: rows.map(({ name }) => ({ name, cells: places.map(() => '') })),
      },
    ];
  const could = `☐ ${say(compare.paperCould)}  ☐ ${say(compare.paperHardly)}`;
  return [
    question(sheet.question ?? say(compare.questionChance)),
    tally,
    text(say(compare.paperSheetChance)),
    {
      block: 'blanks',
      look: 'compare-ticks',
      wide: catalogues.en.notes.wideTable,
      heads: [compare.colPits, compare.paperAlike, compare.paperBefore, compare.paperAfter].map((head) =>
        say(head),
      ),
      rows: pairs.map((pair) => ({
        name: say(compare.pairName, { first: pitNumber(pair.pits[0]), second: pitNumber(pair.pits[1]) }),
        cells: ['0\u20031\u20032\u20033\u20034', could, could],
      })),
    },
    room(say(compare.paperWhy)),
  ];
}
