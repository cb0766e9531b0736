import { oneOf, quoted, writeNearest } from './problems.ts';

interface Sentences {
  readonly expected: string;
  readonly received: string;
  readonly mend: string;
}

/** Sentences for what can be wrong in an order block. */
export const orderProblems = {
  repeated: (id: string): Sentences => ({
    expected: 'an id of its own for each step',
    received: `${quoted(id)} a second time`,
    mend: 'give one of the two another id, or remove it',
  }),
  alike: (name: string): Sentences => ({
    expected: 'cards that can be told apart',
    received: `a second card that says ${quoted(name)}`,
    mend: 'say on each card what is done there',
  }),
  unknown: (written: string, near: string | null, known: readonly string[]): Sentences => ({
    expected: `the id of a step of this block: ${oneOf(known, 'under steps')}`,
    received: quoted(written),
    mend: writeNearest(near, known, 'under steps'),
  }),
  circular: (cycle: readonly string[]): Sentences => ({
    expected: 'steps that can be done one after another',
    received: `a ring: ${[...cycle, ...cycle.slice(0, 1)].join(', then ')}`,
    mend: 'take one of these out of the must-follow of the next',
  }),
  unordered: (): Sentences => ({
    expected: 'at least one step that must follow another',
    received: 'steps in any order at all',
    mend: 'write "must-follow" where a step cannot come before another',
  }),
  tooMany: (steps: number, most: number, band: string): Sentences => ({
    expected: `at most ${most} cards at ages ${band}`,
    received: String(steps),
    mend: 'leave steps out, or choose an older band',
  }),
  minutesUnder: (minutes: number, least: number, steps: number): Sentences => ({
    expected: `about ${least} minutes for ${steps} cards`,
    received: `${minutes} minutes`,
    mend: `write "minutes: ${least}", or use fewer cards`,
  }),
  findUnknown: (written: string, near: string | null, site: string): Sentences => ({
    expected: `the id of a find of ${site}`,
    received: quoted(written),
    mend: near === null ? 'write the id of a find, or remove the line' : `write ${quoted(near)}`,
  }),
  sourceUnknown: (written: string, near: string | null, known: readonly string[]): Sentences => ({
    expected: oneOf(known, 'in content/sources.yaml'),
    received: quoted(written),
    mend: writeNearest(near, known, 'in content/sources.yaml'),
  }),
};
