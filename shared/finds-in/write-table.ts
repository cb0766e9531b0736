import type { Find } from '../library/library.ts';
import { TABLE_COLUMNS } from '../library/read-finds-table.ts';

/** A text as a cell of a table: in quotes where it needs them. */
export const cell = (text: string): string =>
  /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;

/** A find's cells by column name; what is absent is an empty cell. */
export const cellsOf = (find: Find): Readonly<Record<string, string | number | undefined>> => ({
  pit: find.pit,
  'small find': find.smallFind,
  context: find.context,
  'object type': find.attributes['object-type'],
  material: find.attributes.material,
  'length mm': find.lengthMm,
  'width mm': find.widthMm,
  'thickness mm': find.thicknessMm,
  'mass g': find.massG,
  count: find.count === 1 ? undefined : find.count,
  state: find.attributes.state,
  'made by': find.attributes['made-by'],
  'used for': find.attributes['used-for'],
  age: find.attributes.age,
  role: find.role,
  side: find.side,
  decoration: find.decoration,
  note: find.note,
});

/**
 * Finds as a finds table of ours, the text that `readFindsTable` reads back to the same finds.
 *
 * @example writeFindsTable([]).startsWith('pit,small find,context') // true
 */
export function writeFindsTable(finds: readonly Find[]): string {
  const rows = finds.map((find) => {
    const cells = cellsOf(find);
    return TABLE_COLUMNS.map((column) => cell(String(cells[column] ?? ''))).join(',');
  });
  return `${[TABLE_COLUMNS.join(','), ...rows].join('\n')}\n`;
}
