import { oneOf, quoted, writeNearest } from './problems.ts';

interface Sentences {
  readonly expected: string;
  readonly received: string;
  readonly mend: string;
}

/** Sentences for problems in tables of counts: a row a pit, a column a kind. */
export const countsWords = {
  empty: (): Sentences => ({
    expected: 'a first row with "pit" and the kinds, then a row for each pit: its name, its counts',
    received: 'no such rows',
    mend: 'write a line such as "pit,flake,pig jaw" and under it "P1,12,1"',
  }),
  quoteUnclosed: (): Sentences => ({
    expected: 'a quote that closes the cell',
    received: 'the end of the file',
    mend: 'put a double quote at the end of this cell, or remove the one at its start',
  }),
  ragged: (cells: number, columns: number): Sentences => ({
    expected: `${columns} cells, as in the first row`,
    received: String(cells),
    mend: 'add or remove commas; put quotes round a name that holds a comma',
  }),
  notCount: (kind: string, written: string): Sentences => ({
    expected: `how many of ${quoted(kind)}: a whole number from 0`,
    received: written === '' ? 'an empty cell' : quoted(written),
    mend: written === '' ? 'write 0 where none was found' : 'write digits alone; 0 where none was found',
  }),
  tooMany: (most: number): Sentences => ({
    expected: `at most ${most} finds in the whole table`,
    received: 'more, counted up to this cell',
    mend: 'leave out a kind that is counted by the thousand, or count it another way',
  }),
  nameless: (what: string): Sentences => ({
    expected: `the name of a ${what}`,
    received: 'an empty cell',
    mend: `write the name of the ${what}, or remove it`,
  }),
  repeated: (what: string, name: string): Sentences => ({
    expected: `each ${what} once`,
    received: `${quoted(name)} a second time`,
    mend: `add the two together, or give one another name`,
  }),
};

/** Sentences for problems in lists of steps. */
export const stepWords = {
  repeated: (id: string): Sentences => ({
    expected: 'each step once',
    received: `${quoted(id)} a second time`,
    mend: 'remove one of the two, or give it another id',
  }),
  unknown: (id: string, near: string | null, known: readonly string[]): Sentences => ({
    expected: `the id of a step: ${oneOf(known, 'in this file')}`,
    received: quoted(id),
    mend: writeNearest(near, known, 'in this file'),
  }),
  circle: (cycle: readonly string[]): Sentences => ({
    expected: 'steps that can be done one after another',
    received: `a circle: ${[...cycle, ...cycle.slice(0, 1)].join(', then ')}`,
    mend: 'remove one of these steps from the mustFollow of the next',
  }),
};

/** What the verbs `alike` and `orders` say when they are not understood. */
export const compareWords = {
  alikeNeeds: (): string =>
    'alike needs a table of counts: pitlore alike COUNTS.csv --by brainerd-robinson|jaccard|dice [--shuffles N --seed S]',
  ordersNeeds: (): string => 'orders needs a list of steps: pitlore orders STEPS.yaml',
  byUnknown: (written: string, near: string | null, known: readonly string[]): string =>
    `--by: expected ${oneOf(known)}; received ${quoted(written)} (${writeNearest(near, known)})`,
  shufflesUnfit: (written: string, most: number): string =>
    `--shuffles: expected a whole number from 0 to ${most}; received ${quoted(written)} (write 2000, or 0 for none)`,
};
