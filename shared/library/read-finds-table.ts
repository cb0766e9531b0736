import { nearest } from '../lesson/nearest.ts';
import { problemAt, type SourceText } from '../lesson/place-faults.ts';
import { lineMap } from '../lesson/point.ts';
import { byPlace, type Problem, type ProblemCode } from '../lesson/problem.ts';
import { findWords } from '../words/en/library-problems.ts';
import { makeFind, type FindRow } from './find-row.ts';
import { ROLES, STATES, type Find, type Vocabulary } from './library.ts';
import { readCsv, type Cell, type Row } from './read-csv.ts';
import { slug } from './slug.ts';
import type { Status } from './status.ts';

const NUMBERS = ['small-find', 'context', 'length-mm', 'width-mm', 'thickness-mm'] as const;
const MAYBE_NUMBERS = ['mass-g', 'count'] as const;
const WORDS = ['object-type', 'material', 'made-by', 'used-for', 'age'] as const;
const REQUIRED = ['pit', ...NUMBERS, ...WORDS, 'state', 'role'] as const;
const OPTIONAL = [...MAYBE_NUMBERS, 'side', 'decoration', 'note'] as const;
const COLUMNS = [...REQUIRED, ...OPTIONAL] as const;
type Column = (typeof COLUMNS)[number];
/** Numbers that count or name; the others measure. The limits are those of a site file. */
const WHOLE: ReadonlySet<Column> = new Set<Column>(['small-find', 'context', 'count']);
const GREATEST = 100_000;

const spaced = (column: string): string => column.replaceAll('-', ' ');

/** The columns of a finds table as a lead writes them. */
export const TABLE_COLUMNS: readonly string[] = COLUMNS.map(spaced);
const SIDES = ['left', 'right'] as const;

/** Finds of a table, and what is wrong in it, column by column. Rows with an error are left out, never changed. */
export interface FindsTable {
  readonly rows: readonly FoundRow[];
  readonly problems: readonly Problem[];
}

/** A find, and how to tell of something wrong in one of its cells that only the whole site can know. */
export interface FoundRow {
  readonly find: Find;
  readonly problem: (
    code: ProblemCode,
    column: string,
    words: { readonly expected: string; readonly received: string; readonly mend: string },
  ) => Problem;
}

/**
 * Reads a finds table (RFC 4180, first row the column names, in any order and any capitals) into the same finds a
 * site file holds.
 */
export function readFindsTable(
  file: string,
  text: string,
  vocabulary: Vocabulary,
  status: Status,
): FindsTable {
  const shift = text.startsWith('\uFEFF') ? 1 : 0;
  const source: SourceText = { file, lines: lineMap(text.slice(shift)), shift };
  const problems: Problem[] = [];
  const report = (
    cell: Pick<Cell, 'from' | 'to'>,
    code: ProblemCode,
    words: { expected: string; received: string; mend: string },
    more: { replacement?: string; grade?: 'caution' } = {},
  ): void => {
    const span = { from: cell.from - shift, to: cell.to - shift };
    problems.push(problemAt(source, span, { code, grade: 'error', ...words, ...more }));
  };
  const replacing = (word: string | null): { replacement?: string } =>
    word === null ? {} : { replacement: word };

  const { rows, unclosedAt } = readCsv(text);
  if (unclosedAt !== null)
    report({ from: unclosedAt, to: unclosedAt + 1 }, 'cell-unreadable', findWords.quoteUnclosed());
  const [header, ...body] = rows;
  if (header === undefined) {
    report({ from: shift, to: shift }, 'file-empty', findWords.tableEmpty());
    return { rows: [], problems };
  }
  const columnAt = new Map<Column, number>();
  for (const [index, cell] of header.entries()) {
    const column = COLUMNS.find((known) => known === slug(cell.text));
    if (column === undefined) {
      const near = nearest(cell.text, COLUMNS.map(spaced));
      report(
        cell,
        'column-unknown',
        findWords.columnUnknown(cell.text, near, COLUMNS.map(spaced)),
        replacing(near),
      );
    } else if (columnAt.has(column)) report(cell, 'column-repeated', findWords.columnRepeated(cell.text));
    else columnAt.set(column, index);
  }
  const missing = REQUIRED.filter((column) => !columnAt.has(column));
  const start = header[0] ?? { from: 0, to: 0 };
  for (const column of missing) report(start, 'column-missing', findWords.columnMissing(spaced(column)));
  if (missing.length > 0) return { rows: [], problems: problems.toSorted(byPlace) };

  const readRow = (row: Row): FoundRow | null => {
    if (row.length !== header.length) {
      report(row[0] ?? start, 'row-ragged', findWords.rowRagged(row.length, header.length));
      return null;
    }
    const errorsBefore = problems.length;
    const cellOf = (column: string): Cell =>
      row[columnAt.get(column as Column) ?? -1] ?? { text: '', from: start.from, to: start.from };
    const wordOf = (column: Column): string => cellOf(column).text.trim();
    const numberOf = (column: Column): number => {
      const written = wordOf(column);
      if (/^\d+(?:\.\d+)?$/.test(written)) {
        const value = Number(written);
        const isWhole = WHOLE.has(column);
        if (value > 0 && value <= GREATEST && (!isWhole || Number.isInteger(value))) return value;
        report(
          cellOf(column),
          'cell-unreadable',
          findWords.cellOutside(spaced(column), written, isWhole, GREATEST),
        );
        return Number.NaN;
      }
      report(cellOf(column), 'cell-unreadable', findWords.cellNotNumber(spaced(column), written));
      return Number.NaN;
    };
    const choiceOf = <Word extends string>(column: Column, known: readonly Word[]): Word | null => {
      const written = slug(wordOf(column));
      const word = known.find((candidate) => candidate === written);
      if (word !== undefined) return word;
      const near = nearest(written, known);
      report(
        cellOf(column),
        'word-unknown',
        findWords.cellWord(spaced(column), wordOf(column), near, known),
        replacing(near),
      );
      return null;
    };
    const maybe = <Value>(column: Column, value: () => Value): Value | undefined =>
      wordOf(column) === '' ? undefined : value();
    const state = choiceOf('state', STATES);
    const role = choiceOf('role', ROLES);
    const found: FindRow = {
      'small-find': numberOf('small-find'),
      context: numberOf('context'),
      'object-type': wordOf('object-type'),
      material: wordOf('material'),
      'length-mm': numberOf('length-mm'),
      'width-mm': numberOf('width-mm'),
      'thickness-mm': numberOf('thickness-mm'),
      'mass-g': maybe('mass-g', () => numberOf('mass-g')),
      count: maybe('count', () => numberOf('count')),
      state: state ?? '',
      'made-by': wordOf('made-by'),
      'used-for': wordOf('used-for'),
      age: wordOf('age'),
      role: role ?? 'evidence',
      side: maybe('side', () => choiceOf('side', SIDES) ?? undefined),
      decoration: maybe('decoration', () => wordOf('decoration')),
      note: maybe('note', () => wordOf('note')),
    };
    if (problems.length > errorsBefore) return null;
    const { find, faults } = makeFind(wordOf('pit'), found, vocabulary, status);
    for (const { code, grade, path, replacement, expected, received, mend } of faults) {
      const more = {
        ...(replacement === undefined ? {} : { replacement }),
        ...(grade === 'caution' ? { grade } : {}),
      };
      report(cellOf(String(path[0])), code, { expected, received, mend }, more);
    }
    if (find === null) return null;
    return {
      find,
      problem: (code, column, words) => {
        const { from, to } = cellOf(column);
        return problemAt(source, { from: from - shift, to: to - shift }, { code, grade: 'error', ...words });
      },
    };
  };
  return { rows: body.flatMap((row) => readRow(row) ?? []), problems: problems.toSorted(byPlace) };
}
