import { quoted } from './problems.ts';

const fieldNames: Readonly<Record<string, string>> = {
  pit: 'pit',
  'small-find': 'small-find number',
  context: 'context',
  'object-type': 'object',
  material: 'material',
  count: 'count',
  'mass-g': 'weight in grams',
  'length-mm': 'length in mm',
  'width-mm': 'width in mm',
  'thickness-mm': 'thickness in mm',
  dimensions: 'length, width and thickness',
  state: 'state',
  'made-by': 'who made it',
  'used-for': 'what it was used for',
  age: 'age',
  role: 'part in the activity',
  side: 'side',
  decoration: 'decoration',
  note: 'note',
  person: 'name of a person',
};

const fieldName = (field: string): string => fieldNames[field] ?? field;

/** A number as it is shown: at most three digits after the point. */
const told = (value: number): string => String(Number(value.toFixed(3)));

/** Sentences of finds in: what is asked of a cell, what was guessed and why, what was left out. */
export const findsInWords = {
  fieldName,
  unitOf: (field: string): string => (field === 'mass-g' ? 'g' : field.endsWith('-mm') ? 'mm' : ''),

  // Questions.
  wordUnknown: (field: string, written: string): string =>
    `${quoted(written)} is no ${fieldName(field)} we know. Which is it?`,
  wordMissing: (field: string): string => `No ${fieldName(field)} is written. Which is it?`,
  wordOpen: (field: string, written: string): string =>
    `${quoted(written)} can be several things. Which ${fieldName(field)} is it?`,
  wordTaken: (field: string, written: string, label: string): string =>
    `${quoted(written)} is taken for ${quoted(label)}. Is that the ${fieldName(field)}?`,
  contradiction: (field: string, label: string, object: string): string =>
    `${quoted(object)} and ${fieldName(field)} ${quoted(label)} do not go together. Which is right?`,
  formula: (field: string, written: string): string =>
    `${quoted(written)} is a formula or its error, not a value, and is never worked out here. What is the ${fieldName(field)}?`,
  notRecorded: (field: string, written: string): string =>
    written === ''
      ? `No ${fieldName(field)} is written. What is it?`
      : `${quoted(written)} is read as not recorded. What is the ${fieldName(field)}?`,
  notNumber: (field: string, written: string): string =>
    `${quoted(written)} is no number. What is the ${fieldName(field)}?`,
  nothing: (field: string): string => `Nothing can have a ${fieldName(field)} of 0. What is it?`,
  beyondLimits: (field: string, written: string): string =>
    `${quoted(written)} is beyond what can be kept. What is the ${fieldName(field)}?`,
  otherUnit: (field: string, written: string, columnUnit: string): string =>
    `${quoted(written)} has a unit of its own in a column of ${columnUnit}. What is the ${fieldName(field)}?`,
  rough: (field: string, written: string): string =>
    `${quoted(written)} is a rough value. Which ${fieldName(field)} shall stand?`,
  range: (field: string, written: string): string =>
    `${quoted(written)} is a range. Which ${fieldName(field)} shall stand?`,
  separator: (field: string, written: string): string =>
    `The mark in ${quoted(written)} can part thousands or decimals. What is the ${fieldName(field)}?`,
  beyondUsual: (object: string, valueMm: number, leastMm: number, mostMm: number): string =>
    `${told(valueMm)} mm is outside the usual ${told(leastMm)} to ${told(mostMm)} mm for ${quoted(object)}. Is it right?`,
  massDoubtful: (massG: number, leastG: number, mostG: number): string =>
    `${told(massG)} g is outside the ${told(leastG)} to ${told(mostG)} g that a thing of this kind and size weighs. Is it right?`,
  contextUnclear: (written: string): string =>
    written === ''
      ? 'No context is written. Which is it?'
      : `No one context can be read from ${quoted(written)}. Which is it?`,
  cutNotFill: (written: string): string =>
    `Square brackets, as in ${quoted(written)}, commonly number a cut; finds lie in fills. Which context is it?`,
  numberUnclear: (written: string): string =>
    written === ''
      ? 'No small-find number is written. Which is it?'
      : `${quoted(written)} is no plain number. Which small-find number is it?`,
  numberRepeated: (number: number, row: number): string =>
    `Small find ${number} is in row ${row} too. Which number has this one?`,
  countUnclear: (written: string, note: string): string =>
    `The count is ${quoted(written)} and the note says ${quoted(note)}. How many pieces are there?`,
  personNamed: (written: string): string =>
    `${quoted(written)} may name a person. No names are kept: leave that part out?`,
  rowRefitted: (written: string): string =>
    `The row had a cell too many; it fits with ${quoted(written)} as one cell. Is that right?`,
  looseQuote: (): string =>
    'A quote mark in this row closes nothing and is taken as it stands. Is the row right?',
  pitUnclear: (written: string): string =>
    written === ''
      ? 'No pit is written. Which is it?'
      : `No pit can be read from ${quoted(written)}. Which is it?`,
  unfitAnswer: (field: string, written: string): string =>
    `The answer ${quoted(written)} cannot be kept as ${fieldName(field)}. What is it?`,

  // Proposals.
  measured: (value: number, field: string): string => `${told(value)} ${findsInWords.unitOf(field)}`.trim(),
  asWritten: (label: string): string => `as written: ${label}`,
  tenTimes: (label: string): string => `a slip of ten: ${label}`,
  inUnit: (label: string, unit: string): string => `it was in ${unit}: ${label}`,
  leaveOut: (): string => 'leave it out',
  leaveRowOut: (): string => 'leave this row out',
  freeNumber: (number: number): string => `${number}, the next free number`,
  gapNumber: (number: number): string => `${number}, missing from the run`,
  rowAbove: (label: string): string => `${label}, as in the row above`,
  workedOut: (label: string): string => `${label}, worked out from its weight`,
  usualSize: (label: string): string => `${label}, usual for its kind`,
  keepNote: (note: string): string => `keep ${quoted(note)}`,
  withoutName: (note: string): string => (note === '' ? 'leave the note out' : `keep only ${quoted(note)}`),

  // Guesses, told and not asked.
  byType: (object: string): string => `usual for ${quoted(object)}`,
  fromNote: (note: string): string => `the note says ${quoted(note)}`,
  fromObject: (written: string): string => `the object is called ${quoted(written)}`,
  byAge: (): string => 'follows from its age',
  oneOfMeanings: (written: string, object: string): string =>
    `the one meaning of ${quoted(written)} that fits ${quoted(object)}`,
  byWeight: (): string => 'worked out from its weight and its other measures',
  bySize: (): string => 'usual for its kind, at the size its other measures show',
  numbered: (): string => 'numbered here; the list has none',
  fromRun: (contexts: readonly number[]): string =>
    `contexts ${contexts.join(', ')} follow each other, as the fills of one pit do`,
  onlyPit: (): string => 'the list has neither pits nor contexts; all is put in one pit',
  onlyContext: (): string => 'the list has no contexts; all is put in one',

  // Columns.
  column: (why: {
    readonly kind: string;
    readonly word?: string;
    readonly share?: number;
    readonly by?: string;
  }): string => {
    switch (why.kind) {
      case 'lead':
        return 'you said so';
      case 'word':
        return `named ${quoted(why.word ?? '')}`;
      case 'part':
        return `its name holds ${quoted(why.word ?? '')}`;
      case 'slip':
        return `its name is near ${quoted(why.word ?? '')}`;
      case 'values':
        return `${Math.round((why.share ?? 0) * 100)} in 100 of its cells are words we know`;
      case 'place':
        return 'by its place among the numbers: no name says so';
      case 'taken':
        return `not used: column ${quoted(why.by ?? '')} holds the same`;
      case 'empty':
        return 'not used: it is empty';
      default:
        return 'not used: its name is not known';
    }
  },

  // Rows left out.
  blank: (): string => 'nothing is written',
  aboveNames: (): string => 'it stands above the column names',
  totals: (): string => 'a row of totals is no find',
  namesAgain: (): string => 'the column names over again',
  heading: (written: string): string => `only ${quoted(written)} is written, as a heading is`,
  nothingRecorded: (): string => 'no object, no material, no measure',
  leadLeftOut: (): string => 'you left it out',
} as const;
