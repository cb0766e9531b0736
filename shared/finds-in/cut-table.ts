import { readCsv, type Delimiter } from '../library/read-csv.ts';
import { plain } from './plain.ts';

/** A row as the spreadsheet numbers it, from 1, blank rows counted. */
export interface TableRow {
  readonly row: number;
  readonly cells: readonly string[];
}

/** A list cut into rows: what stands above its column names, the names, and what follows. */
export interface CutTable {
  readonly delimiter: Delimiter;
  readonly above: readonly TableRow[];
  /** Null where no row names its columns. */
  readonly header: TableRow | null;
  readonly body: readonly TableRow[];
  readonly columnCount: number;
  /** Rows with a quote mark that closes nothing, taken as it stands. */
  readonly looseQuoteRows: ReadonlySet<number>;
}

const DELIMITERS: readonly Delimiter[] = ['\t', ';', ',', '|'];
/** Rows looked at to tell what parts the cells, and where the column names may stand. */
const SAMPLE = 60;
const HIGHEST_HEADER = 12;

/** The number most rows have, and how many have it. */
function commonest(counts: readonly number[]): { readonly value: number; readonly times: number } {
  const times = new Map<number, number>();
  for (const count of counts) times.set(count, (times.get(count) ?? 0) + 1);
  let best = { value: 1, times: 0 };
  for (const [value, many] of times)
    if (many > best.times || (many === best.times && value > best.value)) best = { value, times: many };
  return best;
}

/** What parts the cells: the mark that gives the most rows the same number of cells, of more than one. */
function pickDelimiter(text: string): Delimiter {
  const start = text.split(/\r\n|\r|\n/, SAMPLE * 4).join('\n');
  let best: { delimiter: Delimiter; merit: number } = { delimiter: ',', merit: 0 };
  for (const delimiter of DELIMITERS) {
    const counts = readCsv(start, { delimiter, isLenient: true })
      .rows.slice(0, SAMPLE)
      .map((row) => row.length);
    const { value, times } = commonest(counts.filter((count) => count > 1));
    const merit = counts.length === 0 ? 0 : (times / counts.length) * Math.min(value - 1, 4);
    if (merit > best.merit) best = { delimiter, merit };
  }
  return best.delimiter;
}

/** Where no name is known: a first row of words over rows that hold numbers names its columns in words we do not have. */
function unnamedHeader(rows: readonly TableRow[]): TableRow | null {
  const [first, second] = rows.filter(({ cells }) => cells.some((cell) => cell !== ''));
  if (first === undefined || second === undefined) return null;
  const words = first.cells.filter((cell) => cell !== '');
  const numbers = second.cells.filter((cell) => /^[(<[]?\d/.test(cell)).length;
  return words.length > 2 && numbers > 1 && words.every((cell) => /\p{L}/u.test(cell) && !/^\d/.test(cell))
    ? first
    : null;
}

/**
 * Cuts any table into rows, keeping each row's number in the spreadsheet.
 *
 * @param namesColumn True for a cell that names a column; the row with the most such cells, of at least two, is the header.
 */
export function cutTable(text: string, namesColumn: (cell: string) => boolean): CutTable {
  const delimiter = pickDelimiter(text);
  const read = readCsv(text, { delimiter, keepBlank: true, isLenient: true });
  const rows = read.rows.map((cells, index): TableRow => ({
    row: index + 1,
    cells: cells.map((cell) => cell.text.replace(/[\u00A0\u2007\u202F]/g, ' ').trim()),
  }));
  const looseQuoteRows = new Set<number>();
  if (read.looseQuotes.length > 0) {
    const loose = new Set(read.looseQuotes);
    for (const [index, cells] of read.rows.entries()) {
      if (cells.some(({ from }) => loose.has(from))) looseQuoteRows.add(index + 1);
    }
  }
  let header: TableRow | null = null;
  let most = 1;
  for (const row of rows.slice(0, HIGHEST_HEADER)) {
    const named = new Set(row.cells.filter((cell) => plain(cell) !== '' && namesColumn(cell)).map(plain))
      .size;
    // A header names columns with most of what it holds; a find may hold one or two such words.
    if (named > most && named * 3 >= row.cells.filter((cell) => cell !== '').length)
      [header, most] = [row, named];
  }
  header ??= unnamedHeader(rows);
  const first = header?.row ?? 0;
  const body = rows.slice(first);
  const { value: widest, times } = commonest(
    body.map(({ cells }) => cells.length).filter((count) => count > 1),
  );
  return {
    delimiter,
    above: rows.slice(0, Math.max(0, first - 1)),
    header,
    body,
    // Columns at the end may have no name; then most rows have a cell there.
    columnCount:
      header === null || times * 2 > body.length
        ? Math.max(header?.cells.length ?? 0, widest)
        : header.cells.length,
    looseQuoteRows,
  };
}
