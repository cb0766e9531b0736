import { oneOf, quoted, writeNearest } from './problems.ts';

interface Sentences {
  readonly expected: string;
  readonly received: string;
  readonly mend: string;
}

const grams = (value: number): string => (value < 10 ? value.toFixed(1) : String(Math.round(value)));

/** Sentences for problems in finds tables and site files. */
export const findWords = {
  wordUnknown: (
    attribute: string,
    written: string,
    near: string | null,
    known: readonly string[],
  ): Sentences => ({
    expected: `a ${attribute.replace('-', ' ')} from the vocabulary: ${oneOf(known, 'in content/vocabulary.yaml')}`,
    received: quoted(written),
    mend:
      near === null
        ? `${writeNearest(null, known, 'in content/vocabulary.yaml')}, or add the word to that file`
        : `write ${quoted(near)}`,
  }),
  massDoubtful: (massG: number, leastG: number, greatestG: number): Sentences => ({
    expected: `from ${grams(leastG)} to ${grams(greatestG)} g for a thing of this type, stone and size`,
    received: `${massG} g`,
    mend: 'weigh or measure it again, or leave the mass out',
  }),
  columnMissing: (column: string): Sentences => ({
    expected: `a column "${column}"`,
    received: 'no such column in the first row',
    mend: `add a column "${column}"`,
  }),
  columnUnknown: (column: string, near: string | null, known: readonly string[]): Sentences => ({
    expected: oneOf(known, 'in the help page'),
    received: quoted(column),
    mend: near === null ? 'rename the column, or remove it' : `write ${quoted(near)}`,
  }),
  columnRepeated: (column: string): Sentences => ({
    expected: 'each column once',
    received: `${quoted(column)} a second time`,
    mend: 'remove one of the two columns',
  }),
  rowRagged: (cells: number, columns: number): Sentences => ({
    expected: `${columns} cells, as in the first row`,
    received: `${cells}`,
    mend: 'add or remove commas; put quotes round a cell that holds a comma',
  }),
  cellNotNumber: (column: string, written: string): Sentences => ({
    expected: `a number for ${quoted(column)}, digits and at most one point`,
    received: written === '' ? 'an empty cell' : quoted(written),
    mend: written === '' ? 'fill the cell' : 'write the number alone: no unit, and a point for decimals',
  }),
  cellOutside: (column: string, written: string, isWhole: boolean, most: number): Sentences => ({
    expected: isWhole
      ? `a whole number from 1 to ${most} for ${quoted(column)}`
      : `a number above 0, at most ${most}, for ${quoted(column)}`,
    received: quoted(written),
    mend: 'look at the record again, and write the number it has',
  }),
  cellWord: (column: string, written: string, near: string | null, known: readonly string[]): Sentences => ({
    expected: `${column}: ${oneOf(known)}`,
    received: written === '' ? 'an empty cell' : quoted(written),
    mend: writeNearest(near, known),
  }),
  quoteUnclosed: (): Sentences => ({
    expected: 'a quote that closes the cell',
    received: 'the end of the file',
    mend: 'put a double quote at the end of this cell, or remove the one at its start',
  }),
  tableEmpty: (): Sentences => ({
    expected: 'a first row of column names, then a row for each find',
    received: 'no rows',
    mend: 'copy the column names from a finds table that works',
  }),
  pitUnknown: (pit: string, near: string | null, known: readonly string[]): Sentences => ({
    expected: `a pit of this site: ${oneOf(known, 'in the site file')}`,
    received: pit === '' ? 'an empty cell' : quoted(pit),
    mend: writeNearest(near, known, 'in the site file'),
  }),
  contextUnknown: (context: number, pit: string, known: readonly string[]): Sentences => ({
    expected: `a context of pit ${pit}: ${oneOf(known, 'in the site file')}`,
    received: String(context),
    mend: `write ${oneOf(known, 'in the site file')}, or add the fill to the site file`,
  }),
  findRepeated: (id: string): Sentences => ({
    expected: 'each small-find number once',
    received: `${quoted(id)} a second time`,
    mend: 'give this find a number of its own',
  }),
};
