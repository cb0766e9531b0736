import { quoted } from './problems.ts';

interface Sentences {
  readonly expected: string;
  readonly received: string;
  readonly mend: string;
}

/** What is said of a day file that cannot be read. */
export const dayProblems = {
  after: (from: string, to: string): Sentences => ({
    expected: `a time after ${from}`,
    received: quoted(to),
    mend: 'put the later time second',
  }),
  notBefore: (before: string, from: string): Sentences => ({
    expected: `a slot that begins at ${before} or later`,
    received: quoted(from),
    mend: 'write the slots in the order of the bells, none over another',
  }),
  noSlot: (slots: number, slot: number): Sentences => ({
    expected: `the number of a slot, 1 to ${slots}`,
    received: String(slot),
    mend: 'count the slots from 1, in the order of the bells',
  }),
  outside: (least: number, most: number, has: number): Sentences => ({
    expected: `${least} to ${most} of them`,
    received: String(has),
    mend: has > most ? 'plan a longer list in two halves' : 'write at least one',
  }),
  noWay: (from: string, to: string): Sentences => ({
    expected: `minutes on foot that join every place`,
    received: `no way from ${quoted(from)} to ${quoted(to)}`,
    mend: `add { from: ${from}, to: ${to}, minutes: 2 } under walking`,
  }),
};
