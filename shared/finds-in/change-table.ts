import type { Find } from '../library/library.ts';
import { readCsv, type Row } from '../library/read-csv.ts';
import { TABLE_COLUMNS } from '../library/read-finds-table.ts';
import { slug } from '../library/slug.ts';
import { cell, cellsOf } from './write-table.ts';

/** A record, and what takes its place. */
export interface Replaced {
  readonly there: Find;
  readonly find: Find;
}

interface Table {
  readonly rows: readonly Row[];
  /** The column each cell of a row stands in, as we name it; null where the name is not known. */
  readonly columns: readonly (string | null)[];
}

/** A finds table as rows and columns; null where a row added to it would not be read as one. */
function readTable(text: string): Table | null {
  const { rows, unclosedAt } = readCsv(text);
  const [header] = rows;
  if (header === undefined || unclosedAt !== null) return null;
  const columns = header.map(({ text: name }) => {
    const spaced = slug(name).replaceAll('-', ' ');
    return TABLE_COLUMNS.includes(spaced) ? spaced : null;
  });
  const named = columns.filter((name) => name !== null);
  return new Set(named).size === named.length && columns[0] !== undefined ? { rows, columns } : null;
}

/** True where a table has a column for all that a find says. */
const holds = ({ columns }: Table, find: Find): boolean =>
  Object.entries(cellsOf(find)).every(([name, value]) => value === undefined || columns.includes(name));

const newlineOf = (text: string): string => (text.includes('\r\n') ? '\r\n' : '\n');

/**
 * Adds finds to a finds table, in its own order of columns; the text before them stays as it is.
 *
 * @returns null where the table cannot be read, or has no column for something a find says.
 * @example addToTable('pit,small find', []) // 'pit,small find'
 */
export function addToTable(text: string, finds: readonly Find[]): string | null {
  if (finds.length === 0) return text;
  const table = readTable(text);
  if (table === null || !finds.every((find) => holds(table, find))) return null;
  const newline = newlineOf(text);
  const rows = finds.map((find) => {
    const cells = cellsOf(find);
    return table.columns.map((name) => cell(String(cells[name ?? ''] ?? ''))).join(',');
  });
  const ended = text.endsWith('\n') || text.endsWith('\r') ? text : `${text}${newline}`;
  return `${ended}${rows.join(newline)}${newline}`;
}

interface Edit {
  readonly from: number;
  readonly to: number;
  readonly put: string;
}

/**
 * Puts records in the place of others in a finds table: only cells that say otherwise are written. A record that the
 * table has no column for is taken out of it, to stand elsewhere.
 *
 * @returns The text, the records still to be put somewhere, and those that are not of this table.
 */
export function replaceInTable(
  text: string,
  replaced: readonly Replaced[],
): { readonly text: string; readonly homeless: readonly Find[]; readonly others: readonly Replaced[] } {
  const table = readTable(text);
  if (table === null) return { text, homeless: [], others: replaced };
  const pitAt = table.columns.indexOf('pit');
  const numberAt = table.columns.indexOf('small find');
  const rowOf = ({ there }: Replaced): number =>
    table.rows.findIndex(
      (row, index) =>
        index > 0 &&
        row[pitAt]?.text.trim() === there.pit &&
        Number(row[numberAt]?.text.trim()) === there.smallFind,
    );
  const edits: Edit[] = [];
  const homeless: Find[] = [];
  const others: Replaced[] = [];
  for (const each of replaced) {
    const index = rowOf(each);
    const row = table.rows[index];
    const first = row?.[0];
    if (row === undefined || first === undefined) others.push(each);
    else if (!holds(table, each.find)) {
      homeless.push(each.find);
      edits.push({ from: first.from, to: table.rows[index + 1]?.[0]?.from ?? text.length, put: '' });
    } else {
      const before = cellsOf(each.there);
      const after = cellsOf(each.find);
      for (const [place, name] of table.columns.entries()) {
        const at = row[place];
        if (name === null || at === undefined || before[name] === after[name]) continue;
        edits.push({ from: at.from, to: at.to, put: cell(String(after[name] ?? '')) });
      }
    }
  }
  const changed = edits
    .toSorted((a, b) => b.from - a.from)
    .reduce((whole, { from, to, put }) => whole.slice(0, from) + put + whole.slice(to), text);
  return { text: changed, homeless, others };
}
