import { makeFind } from '../library/find-row.ts';
import type { Find, Site, Vocabulary } from '../library/library.ts';
import type { Delimiter } from '../library/read-csv.ts';
import type { Status } from '../library/status.ts';
import { findsInWords as words } from '../words/en/finds-in.ts';
import { cellKey, LEAVE_ROW_OUT, NO_ANSWERS, type Answers } from './answers.ts';
import { cutTable, type TableRow } from './cut-table.ts';
import type { Field } from './fields.ts';
import { isNumeric } from './fields.ts';
import { guessByPlace } from './guess-by-place.ts';
import { guessColumns, type ColumnGuess } from './guess-columns.ts';
import { guessUnits } from './guess-units.ts';
import { prepareFindsIn, type Prepared } from './prepare.ts';
import { readNumber } from './read-number.ts';
import { readRow, type RowRead } from './read-row.ts';
import { answered, ask, makeReading, type OpenRow, type Reading } from './reading.ts';
import type { FindsInWords } from './read-words.ts';
import { refit } from './realign.ts';
import { settleNumbers } from './settle-numbers.ts';
import { settlePits, type PitGuess } from './settle-pits.ts';
import { leftOut } from './sift-rows.ts';
import type { Question } from './question.ts';

/** What became of a row: a find; a find with questions, or one that waits for answers (`find` null); left out, and why. */
export interface RowIn {
  /** As the spreadsheet numbers it, from 1. */
  readonly row: number;
  readonly cells: readonly string[];
  readonly outcome: 'find' | 'asked' | 'left-out';
  readonly find: Find | null;
  /** True where the small-find number was given here, because the list has none that can be read. */
  readonly isNumberGiven: boolean;
  readonly questions: readonly Question[];
  /** Fields that no cell gave, and the rule that did. */
  readonly guessed: Readonly<Partial<Record<Field, string>>>;
  /** Why it is left out; null for the others. */
  readonly reason: string | null;
}

/** A list as it is taken in: nothing of it is dropped without a word. */
export interface FindsIn {
  readonly delimiter: Delimiter;
  readonly usesDecimalComma: boolean;
  readonly headerRow: number | null;
  readonly columns: readonly ColumnGuess[];
  readonly rows: readonly RowIn[];
  readonly finds: readonly Find[];
  readonly questions: readonly Question[];
  readonly pits: readonly PitGuess[];
  /** `rows` = `found` + `asked` + `leftOut`; of the asked, `waiting` have no find yet. */
  readonly counts: {
    readonly rows: number;
    readonly found: number;
    readonly asked: number;
    readonly waiting: number;
    readonly leftOut: number;
  };
}

interface Given {
  readonly vocabulary: Vocabulary;
  readonly words: FindsInWords;
  /** The look-ups of these two, where the same list is read again and again. */
  readonly prepared?: Prepared;
  /** The site the finds come from, where it is known: its contexts tell the pits. */
  readonly site?: Site | null;
  readonly answers?: Answers;
  /** How the finds are known; a lead's own record is their judgement where nothing else is said. */
  readonly status?: Status;
}

/** True where more decimals of the list are written with a comma than with a point. */
function usesDecimalComma(body: readonly TableRow[]): boolean {
  let commas = 0;
  let points = 0;
  for (const { cells } of body.slice(0, 400)) {
    for (const cell of cells) {
      if (/^\d+,\d{1,2}(?:\s*[a-z]{1,2})?$/.test(cell)) commas += 1;
      else if (/^\d+\.\d{1,2}(?:\s*[a-z]{1,2})?$/.test(cell)) points += 1;
    }
  }
  return commas > points;
}

/** How well a text fits a column, for rows with a cell too many. */
function makeFit(
  columns: readonly ColumnGuess[],
  reading: Reading,
  usesComma: boolean,
): (text: string, column: number) => number {
  return (text, column) => {
    const field = columns[column]?.guess ?? null;
    if (text === '') return 0.2;
    if (isNumeric(field))
      return readNumber(text, usesComma).kind === 'number' ? 1 : reading.isNotRecorded(text) ? 0.4 : -1;
    if (field === null || field === 'note' || field === 'person') return 0.3;
    if (field === 'object-type' || field === 'material' || field === 'age' || field === 'state') {
      const { sure, ids } = reading.lookUps[field](text);
      return ids.length === 0 ? -0.2 : sure === 'yes' ? 1 : sure === 'ask' ? 0.6 : 0.3;
    }
    return 0.2;
  };
}

/**
 * Reads a finds list as it comes: any delimiter, any of the languages listed, units, gaps and slips. Every row becomes a
 * find, a find with questions, or is left out with a reason. Pure: the same text and answers give the same result.
 *
 * @example readFindsIn('SF,Object\n1,Flake', { vocabulary, words }).counts.rows // 1
 */
export function readFindsIn(text: string, given: Given): FindsIn {
  const { vocabulary, site = null, answers = NO_ANSWERS, status = 'ASM' } = given;
  const prepared = given.prepared ?? prepareFindsIn(vocabulary, given.words);
  const reading = makeReading(prepared, answers);
  const { headerWords, totals } = prepared;
  const cut = cutTable(text, headerWords.names);
  const usesComma = usesDecimalComma(cut.body);
  const named = guessColumns(cut, headerWords, reading.plainLookUps, answers, usesComma);
  const placed = guessByPlace(named, cut.body, usesComma);
  const columns = guessUnits(placed, cut.body, reading, usesComma);

  const byField = new Map<Field, ColumnGuess[]>();
  for (const column of columns)
    if (column.guess !== null) byField.set(column.guess, [...(byField.get(column.guess) ?? []), column]);
  const indicesOf = (field: Field): readonly number[] => (byField.get(field) ?? []).map(({ index }) => index);
  const fit = makeFit(columns, reading, usesComma);
  const joint = cut.delimiter === '\t' ? ' ' : `${cut.delimiter} `;

  const out: { readonly row: TableRow; readonly reason: string }[] = cut.above.map((row) => ({
    row,
    reason: row.cells.every((cell) => cell === '') ? words.blank() : words.aboveNames(),
  }));
  const header = (cut.header?.cells ?? []).map((name) => name.toLowerCase()).filter((name) => name !== '');
  const names = { names: new Set(header), count: columns.length };
  const read: (RowRead & { readonly cells: readonly string[] })[] = [];
  let above: number | null = null;
  for (const row of cut.body) {
    const { cells, isRefitted } = refit(row.cells, columns.length, joint, fit);
    const reason = leftOut({ ...row, cells }, names, indicesOf, totals);
    const isOut = answers.cells[cellKey({ row: row.row, field: 'small-find' })] === LEAVE_ROW_OUT;
    if (reason !== null || isOut) {
      out.push({ row, reason: reason ?? words.leadLeftOut() });
      continue;
    }
    const open = openRow(row.row, cells, byField);
    const result = readRow(reading, open, above, usesComma);
    above = result.context ?? above;
    if (isRefitted) askRefitted(reading, open, row.cells, cells, columns);
    if (cut.looseQuoteRows.has(row.row)) askLooseQuote(reading, open);
    read.push({ ...result, cells: row.cells });
  }
  const { places, pits } = settlePits(read, site, answers, byField.has('context'));
  const textOfRow = new Map(cut.body.map(({ row, cells }) => [row, cells.join('\t')]));
  const sameText = (a: RowRead, b: RowRead): boolean =>
    textOfRow.get(a.open.row) === textOfRow.get(b.open.row);
  const there = (site?.pits ?? []).flatMap((pit) => pit.finds.map(({ smallFind }) => smallFind));
  const numbers = settleNumbers(read, places, sameText, there);

  const rows = [
    ...out.map(({ row, reason }): RowIn => ({
      ...row,
      outcome: 'left-out',
      find: null,
      isNumberGiven: false,
      questions: [],
      guessed: {},
      reason,
    })),
    ...read.map(({ open, found, cells, smallFind }, index): RowIn => {
      const place = places[index] ?? null;
      const number = numbers[index] ?? null;
      const isWaiting = open.questions.some(({ isBlocking }) => isBlocking);
      const find =
        isWaiting || found === null || place === null || number === null
          ? null
          : makeFind(
              place.pit,
              { ...found, 'small-find': number, context: place.context },
              vocabulary,
              status,
            ).find;
      const questions = open.questions.toSorted((a, b) => (a.column ?? 1e6) - (b.column ?? 1e6));
      const outcome = questions.length > 0 || find === null ? 'asked' : 'find';
      return {
        row: open.row,
        cells,
        outcome,
        find,
        isNumberGiven: smallFind === null,
        questions,
        guessed: Object.fromEntries(open.guessed),
        reason: null,
      };
    }),
  ].toSorted((a, b) => a.row - b.row);

  const countOf = (holds: (row: RowIn) => boolean): number => rows.filter(holds).length;
  return {
    delimiter: cut.delimiter,
    usesDecimalComma: usesComma,
    headerRow: cut.header?.row ?? null,
    columns,
    rows,
    finds: rows.flatMap(({ find }) => find ?? []),
    questions: rows.flatMap(({ questions }) => questions),
    pits,
    counts: {
      rows: rows.length,
      found: countOf(({ outcome }) => outcome === 'find'),
      asked: countOf(({ outcome }) => outcome === 'asked'),
      waiting: countOf(({ outcome, find }) => outcome === 'asked' && find === null),
      leftOut: countOf(({ outcome }) => outcome === 'left-out'),
    },
  };
}

function openRow(
  row: number,
  cells: readonly string[],
  byField: ReadonlyMap<Field, readonly ColumnGuess[]>,
): OpenRow {
  return {
    row,
    // Several columns of notes make one note.
    textOf: (field) => {
      const own = byField.get(field) ?? [];
      const [first] = own;
      if (own.length < 2) return first === undefined ? '' : (cells[first.index] ?? '');
      return own
        .map(({ index }) => cells[index] ?? '')
        .filter((cell) => cell !== '')
        .join('; ');
    },
    columnOf: (field) => byField.get(field)?.[0] ?? null,
    questions: [],
    guessed: new Map(),
  };
}

/** Tells of a row with more cells than columns: at the column where cells were joined, or the last. */
function askRefitted(
  reading: Reading,
  open: OpenRow,
  cells: readonly string[],
  fitted: readonly string[],
  columns: readonly ColumnGuess[],
): void {
  const joined = fitted.findIndex((cell) => !cells.includes(cell));
  const column = columns[joined === -1 ? columns.length - 1 : joined];
  const field = column?.guess ?? 'note';
  if (answered(reading, open, field) !== undefined) return;
  const written = fitted[joined] ?? cells.slice(columns.length - 1).join(', ');
  const [id] =
    field === 'object-type' || field === 'material' || field === 'age'
      ? reading.lookUps[field](written).ids
      : [];
  const proposals = id === undefined ? [] : [{ value: id, label: reading.label(field, id) }];
  const question = {
    reason: 'row-refitted',
    received: written,
    asked: words.rowRefitted(written),
    proposals,
  } as const;
  ask(open, field, { ...question, taken: id ?? written });
}

function askLooseQuote(reading: Reading, open: OpenRow): void {
  if (reading.answers.cells[cellKey({ row: open.row, field: 'note' })] !== undefined) return;
  ask(open, 'note', {
    reason: 'loose-quote',
    asked: words.looseQuote(),
    proposals: [],
    taken: open.textOf('note'),
  });
}
