import { oneOf, quoted, writeNearest } from './problems.ts';

interface Sentences {
  readonly expected: string;
  readonly received: string;
  readonly mend: string;
}

/** Sentences for what can be wrong in a file of hazards, a situation, or in what a lesson puts in a child's hand. */
export const safetyProblems = {
  idTwice: (id: string): Sentences => ({
    expected: 'each id once in its list',
    received: `${quoted(id)} a second time`,
    mend: 'give this row an id of its own',
  }),
  sourceUnknown: (written: string, near: string | null): Sentences => ({
    expected: 'the id of a source at the end of this file',
    received: quoted(written),
    mend: near === null ? 'add the source, or name one that is there' : `write ${quoted(near)}`,
  }),
  pointsNowhere: (written: string, near: string | null, known: readonly string[]): Sentences => ({
    expected: oneOf(known, 'further up in this file'),
    received: quoted(written),
    mend: writeNearest(near, known, 'further up in this file'),
  }),
  rowMissing: (id: string, list: string): Sentences => ({
    expected: `a row ${quoted(id)} under ${list}`,
    received: 'none',
    mend: 'put the row back: the reckoning of adults and the refusals rest on it',
  }),
  frameworkUnknown: (written: string, near: string | null, known: readonly string[]): Sentences => ({
    expected: `a framework: ${known.join(', ')}`,
    received: quoted(written),
    mend: near === null ? `write one of: ${known.join(', ')}` : `write ${quoted(near)}`,
  }),
  localMissing: (): Sentences => ({
    expected: 'localChildrenPerAdult, the figure of your employer, council or district',
    received: 'none',
    mend: 'write the figure, or leave "local" out',
  }),
};
