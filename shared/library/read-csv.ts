/** One cell, with the offset of its first character in the file (its opening quote where it has one). */
export interface Cell {
  readonly text: string;
  readonly from: number;
  readonly to: number;
}

/** A row of a table; a line that holds nothing at all is left out. */
export type Row = readonly Cell[];

/**
 * Reads comma-separated values as RFC 4180 has them: quotes round a cell let it hold commas, line ends and doubled
 * quotes. A byte-order mark is passed over. Written here because every cell's place is needed; checked against a
 * well-known reader in the tests. Any text gives rows; an unclosed quote runs to the end and is told in `unclosedAt`.
 *
 * @example readCsv('pit,note\nP1,"a, b"').rows[1]?.[1]?.text // 'a, b'
 */
export function readCsv(text: string): { readonly rows: readonly Row[]; readonly unclosedAt: number | null } {
  const rows: Row[] = [];
  let row: Cell[] = [];
  let unclosedAt: number | null = null;
  let offset = text.startsWith('\uFEFF') ? 1 : 0;
  const endRow = (): void => {
    if (row.length > 1 || (row[0]?.text ?? '') !== '') rows.push(row);
    row = [];
  };
  while (offset < text.length) {
    const from = offset;
    let value = '';
    if (text[offset] === '"') {
      offset += 1;
      let isOpen = true;
      while (isOpen) {
        const quote = text.indexOf('"', offset);
        if (quote === -1) {
          unclosedAt ??= from;
          value += text.slice(offset);
          offset = text.length;
          isOpen = false;
        } else if (text[quote + 1] === '"') {
          value += text.slice(offset, quote + 1);
          offset = quote + 2;
        } else {
          value += text.slice(offset, quote);
          offset = quote + 1;
          isOpen = false;
        }
      }
    }
    const rest = /[^,\r\n]*/y;
    rest.lastIndex = offset;
    value += rest.exec(text)?.[0] ?? '';
    offset = rest.lastIndex;
    row.push({ text: value, from, to: offset });
    if (text[offset] === ',') {
      offset += 1;
      if (offset === text.length) row.push({ text: '', from: offset, to: offset });
    } else {
      endRow();
      offset += text[offset] === '\r' && text[offset + 1] === '\n' ? 2 : 1;
    }
  }
  if (row.length > 0) endRow();
  return { rows, unclosedAt };
}
