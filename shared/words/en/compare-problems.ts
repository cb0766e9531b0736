import { oneOf, quoted, writeNearest } from './problems.ts';

interface Sentences {
  readonly expected: string;
  readonly received: string;
  readonly mend: string;
}

/** Sentences for what can be wrong in a compare block. */
export const compareProblems = {
  pitUnknown: (written: string, near: string | null, known: readonly string[]): Sentences => ({
    expected: `a pit of the site: ${oneOf(known, 'in the file of the site')}`,
    received: quoted(written),
    mend: writeNearest(near, known, 'in the file of the site'),
  }),
  pitRepeated: (written: string): Sentences => ({
    expected: 'each pit once',
    received: `${quoted(written)} a second time`,
    mend: 'name another pit, or remove it',
  }),
  kindUnknown: (written: string, near: string | null, known: readonly string[]): Sentences => ({
    expected: `an object type that the site has: ${oneOf(known, 'in the finds of the site')}`,
    received: quoted(written),
    mend: writeNearest(near, known, 'in the finds of the site'),
  }),
  kindsTooMany: (kinds: number, most: number, band: string): Sentences => ({
    expected: `at most ${most} kinds of find at ages ${band}`,
    received: String(kinds),
    mend: 'name fewer under "kinds", or choose an older band',
  }),
  minutesUnder: (minutes: number, least: number, kinds: number): Sentences => ({
    expected: `about ${least} minutes for ${kinds} kinds of find`,
    received: `${minutes} minutes`,
    mend: `write "minutes: ${least}", or name fewer kinds`,
  }),
  pitsUnfit: (ask: 'places' | 'chance', pits: number): Sentences => ({
    expected: ask === 'places' ? 'two pits for "ask: places"' : 'three pits or more for "ask: chance"',
    received: String(pits),
    mend: ask === 'places' ? 'name two pits' : 'name more pits, best the whole site',
  }),
  oneAnswer: (ask: 'places' | 'chance'): Sentences =>
    ask === 'places'
      ? {
          expected: 'kinds that lie in different places: some in both pits, some in one',
          received: 'kinds that all have the same place',
          mend: 'name other pits, or other kinds under "kinds"',
        }
      : {
          expected: 'some pairs of pits more alike than chance makes them, and some not',
          received: 'pairs with the same answer throughout',
          mend: 'name more pits, best the whole site, or measure by another likeness',
        },
};
