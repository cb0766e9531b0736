import { findsInWords as words } from '../words/en/finds-in.ts';
import type { Field } from './fields.ts';
import type { TableRow } from './cut-table.ts';
import { plain } from './plain.ts';

/** What holds a find's own record; a row with none of it records nothing. */
const TELLING: readonly Field[] = [
  'object-type',
  'material',
  'mass-g',
  'length-mm',
  'width-mm',
  'thickness-mm',
  'dimensions',
  'note',
];

/** Why a row is no find, or null where it may be one. `header`: the column names in small letters. */
export function leftOut(
  { cells }: TableRow,
  header: { readonly names: ReadonlySet<string>; readonly count: number },
  columnsOf: (field: Field) => readonly number[],
  totals: ReadonlySet<string>,
): string | null {
  const filled = cells.filter((cell) => cell !== '');
  const [first, second] = filled;
  if (first === undefined) return words.blank();
  // A ruled line, as in a table of plain text.
  if (second !== undefined && filled.every((cell) => /^[\s:=_-]+$/.test(cell))) return words.blank();
  const object = columnsOf('object-type')
    .map((index) => cells[index] ?? '')
    .join('');
  const opens = plain(first).replace(/(?:-?\d+)+$/, '');
  if (totals.has(opens) && (object === '' || object === first || totals.has(plain(object))))
    return words.totals();
  const again = filled.filter((cell) => header.names.has(cell.toLowerCase())).length;
  if (again > 1 && again * 2 > filled.length) return words.namesAgain();
  const objectColumns = columnsOf('object-type');
  if (second === undefined && header.count > 2 && !objectColumns.some((index) => cells[index] === first))
    return words.heading(first);
  const holds = TELLING.some((field) => columnsOf(field).some((index) => (cells[index] ?? '') !== ''));
  return holds || !TELLING.some((field) => columnsOf(field).length > 0) ? null : words.nothingRecorded();
}
