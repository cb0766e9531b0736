import { oneOf, quoted, writeNearest } from './problems.ts';

interface Sentences {
  readonly expected: string;
  readonly received: string;
  readonly mend: string;
}

const shown = (value: number | null): string => (value === null ? 'none' : String(value));

/** Sentences for problems in the file of making figures. */
export const makingWords = {
  idTwice: (id: string, list: string): Sentences => ({
    expected: `each id once in ${list}`,
    received: `${quoted(id)} a second time`,
    mend: 'give one of the two another id, or remove it',
  }),
  sourceUnknown: (written: string, near: string | null, known: number): Sentences => ({
    expected: `the id of one of the ${known} sources at the end of this file`,
    received: quoted(written),
    mend: near === null ? 'add the source to "sources"' : `write ${quoted(near)}`,
  }),
  endsFall: (low: number | null, middle: number, high: number | null): Sentences => ({
    expected: 'low, middle and high that do not fall',
    received: `${shown(low)}, ${shown(middle)}, ${shown(high)}`,
    mend: 'put the three in order',
  }),
  defaultUnknown: (written: string, table: string, known: readonly string[]): Sentences => ({
    expected: `an id of ${table}: ${oneOf(known, `under "${table}"`)}`,
    received: quoted(written),
    mend: writeNearest(null, known, `under "${table}"`),
  }),
  figureMissing: (id: string, list: string): Sentences => ({
    expected: `${quoted(id)} in ${list}`,
    received: 'no such row',
    mend: `add a row with the id ${quoted(id)}`,
  }),
  hoursFall: (before: number, hours: number): Sentences => ({
    expected: `more hours than the comparison before, ${before}`,
    received: String(hours),
    mend: 'put the comparisons in order of their hours',
  }),
};
