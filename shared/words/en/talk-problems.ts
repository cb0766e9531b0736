import { oneOf, quoted, writeNearest } from './problems.ts';

interface Sentences {
  readonly expected: string;
  readonly received: string;
  readonly mend: string;
}

const WHERE = 'in content/sources.yaml';

/** Sentences for what can be wrong in a talk block. */
export const talkProblems = {
  sourceUnknown: (written: string, near: string | null, known: readonly string[]): Sentences => ({
    expected: `${oneOf(known, WHERE)}; or common-practice; or invented`,
    received: quoted(written),
    mend: near === null ? `${writeNearest(near, known, WHERE)}, or "invented"` : `write ${quoted(near)}`,
  }),
  stanceRepeated: (stance: string): Sentences => ({
    expected: 'stances that differ',
    received: `${quoted(stance)} a second time`,
    mend: 'remove one of the two, or say where they differ',
  }),
};
