import { assert, array, constantFrom, property, string, tuple, type Arbitrary } from 'fast-check';
import Papa from 'papaparse';
import { expect, test } from 'vitest';
import { readCsv } from '../../../shared/library/index.ts';

const cell: Arbitrary<string> = string({
  unit: constantFrom('a', '1', ',', '"', '\n', '\r\n', '\r', ' ', '\t', ';', 'é', '🦴', "'"),
  maxLength: 8,
});

/** Rectangular tables of two to five columns; a first cell with text, so that no line is wholly empty. */
const table: Arbitrary<string[][]> = tuple(
  constantFrom(1, 2, 3, 4),
  array(array(cell, { minLength: 5, maxLength: 5 }), { maxLength: 6 }),
).map(([more, rows]) => rows.map((row) => ['x', ...row.slice(0, more)]));

const textsOf = (text: string): string[][] => readCsv(text).rows.map((row) => row.map((read) => read.text));

const SEED = 20261125;

test('a table written by papaparse reads as it was, and as papaparse reads it', () => {
  assert(
    property(table, constantFrom('\n', '\r\n'), (rows, newline) => {
      const text = Papa.unparse(rows, { newline });
      expect(textsOf(text)).toEqual(rows);
      expect(textsOf(text)).toEqual(Papa.parse(text, { delimiter: ',', newline }).data);
    }),
    { seed: SEED, numRuns: 2000 },
  );
});

test('the place of each cell is where its text, or its quote, begins and ends', () => {
  assert(
    property(table, (rows) => {
      const text = Papa.unparse(rows, { newline: '\n', quotes: true });
      for (const row of readCsv(text).rows) {
        for (const { text: value, from, to } of row)
          expect(text.slice(from, to)).toBe(`"${value.replaceAll('"', '""')}"`);
      }
    }),
    { seed: SEED, numRuns: 500 },
  );
});

test('any text at all gives rows, and places inside it', () => {
  assert(
    property(string({ unit: 'binary', maxLength: 60 }), (text) => {
      const { rows, unclosedAt } = readCsv(text);
      for (const { from, to } of rows.flat()) expect(0 <= from && from <= to && to <= text.length).toBe(true);
      expect(unclosedAt === null || text[unclosedAt] === '"').toBe(true);
    }),
    { seed: SEED, numRuns: 1000 },
  );
});

test.each([
  { name: 'nothing', text: '', rows: [] },
  { name: 'empty lines are left out', text: '\n\na,b\n\n', rows: [['a', 'b']] },
  { name: 'a last line without an end', text: 'a,b', rows: [['a', 'b']] },
  {
    name: 'a last cell that is empty',
    text: 'a,\nb,',
    rows: [
      ['a', ''],
      ['b', ''],
    ],
  },
  { name: 'only commas', text: ',,\n', rows: [['', '', '']] },
  { name: 'lone carriage returns', text: 'a\rb', rows: [['a'], ['b']] },
  { name: 'a byte-order mark', text: '\uFEFFa,b', rows: [['a', 'b']] },
  {
    name: 'quotes, commas and line ends in a cell',
    text: '"a ""b"", c\r\nd",e',
    rows: [['a "b", c\r\nd', 'e']],
  },
  { name: 'text after a closing quote', text: '"a"b,c', rows: [['ab', 'c']] },
  { name: 'a quote inside a cell', text: 'a"b,c', rows: [['a"b', 'c']] },
])('$name', ({ text, rows }) => {
  expect(textsOf(text)).toEqual(rows);
});

test('a quote that is never closed is told, and runs to the end', () => {
  expect(readCsv('a,b\nc,"d\ne').unclosedAt).toBe(6);
  expect(textsOf('a,b\nc,"d\ne')).toEqual([
    ['a', 'b'],
    ['c', 'd\ne'],
  ]);
});

test.each([',', ';', '\t', '|'] as const)(
  'a table parted by "%s" reads as papaparse reads it',
  (delimiter) => {
    assert(
      property(table, constantFrom('\n', '\r\n'), (rows, newline) => {
        const text = Papa.unparse(rows, { newline, delimiter });
        const read = readCsv(text, { delimiter }).rows.map((row) => row.map((cell) => cell.text));
        expect(read).toEqual(Papa.parse(text, { delimiter, newline }).data);
      }),
      { seed: SEED, numRuns: 500 },
    );
  },
);

test('with blank lines kept, the nth row is the nth of the spreadsheet', () => {
  const { rows } = readCsv('a,b\n\n\nc,d\n', { keepBlank: true });
  expect(rows.map((row) => row.map(({ text }) => text))).toEqual([['a', 'b'], [''], [''], ['c', 'd']]);
});

test.each([
  {
    name: 'a quote that never closes',
    text: 'a,"b\nc,d',
    rows: [
      ['a', '"b'],
      ['c', 'd'],
    ],
    loose: [2],
  },
  {
    name: 'a quote that would close in the middle of a later cell',
    text: 'a,"b\nc,"d"',
    rows: [
      ['a', '"b'],
      ['c', 'd'],
    ],
    loose: [2],
  },
  { name: 'a mark of inches', text: '2","b"', rows: [['2"', 'b']], loose: [] },
  { name: 'sound quotes', text: '"a, b","c\nd"', rows: [['a, b', 'c\nd']], loose: [] },
])('read leniently, $name swallows nothing', ({ text, rows, loose }) => {
  const read = readCsv(text, { isLenient: true });
  expect(read.rows.map((row) => row.map((cell) => cell.text))).toEqual(rows);
  expect(read.looseQuotes).toEqual(loose);
  expect(read.unclosedAt).toBeNull();
});
