import { oneOf, quoted, writeNearest } from './problems.ts';

interface Sentences {
  readonly expected: string;
  readonly received: string;
  readonly mend: string;
}

/** Sentences for what can be wrong in a sort block. */
export const sortProblems = {
  trayUnknown: (
    written: string,
    attribute: string,
    near: string | null,
    known: readonly string[],
  ): Sentences => ({
    expected: `a value of "${attribute}": ${known.join(', ')}`,
    received: quoted(written),
    mend:
      near === null
        ? 'write one of these, or give the tray a name and say what it "holds"'
        : `write ${quoted(near)}`,
  }),
  trayRepeated: (name: string): Sentences => ({
    expected: 'a name of its own for each tray',
    received: `${quoted(name)} a second time`,
    mend: 'rename or remove one of the two',
  }),
  trayOverlap: (value: string, first: string, second: string): Sentences => ({
    expected: 'each value in one tray',
    received: `"${value}" in both ${quoted(first)} and ${quoted(second)}`,
    mend: 'keep it in one; use "also" where a single find can be argued',
  }),
  trayEmpty: (name: string): Sentences => ({
    expected: 'a find for each tray',
    received: `no find belongs in ${quoted(name)}`,
    mend: 'add a find for it or remove the tray; leave it if an empty tray is meant to tempt',
  }),
  traysTooMany: (trays: number, most: number, band: string): Sentences => ({
    expected: `at most ${most} trays at ages ${band}`,
    received: String(trays),
    mend: 'join trays with "holds", or choose an older band',
  }),
  alsoTrayUnknown: (written: string, near: string | null, known: readonly string[]): Sentences => ({
    expected: known.length === 0 ? 'trays named in this block' : oneOf(known, 'under trays'),
    received: quoted(written),
    mend:
      known.length === 0
        ? 'remove "also": pupils make their own trays here'
        : writeNearest(near, known, 'under trays'),
  }),
  findUnknown: (
    written: string,
    near: string | null,
    known: readonly string[],
    where: string,
  ): Sentences => ({
    expected:
      known.length <= 8
        ? `one of ${where}: ${known.join(', ')}`
        : `one of ${where} (${known.length} of them)`,
    received: quoted(written),
    mend: near === null ? `write the id of one of ${where}` : `write ${quoted(near)}`,
  }),
  pitUnknown: (written: string, near: string | null, known: readonly string[]): Sentences => ({
    expected: `a pit of this site: ${oneOf(known, 'in the site file')}`,
    received: quoted(written),
    mend: writeNearest(near, known, 'in the site file'),
  }),
  findRepeated: (id: string): Sentences => ({
    expected: 'each find once',
    received: `${quoted(id)} a second time`,
    mend: 'remove one of the two',
  }),
  findHomeless: (find: string, by: string, value: string): Sentences => ({
    expected: 'a tray for every find',
    received: `no tray for find ${find}, whose ${by} is "${value}"`,
    mend: `add a tray that holds "${value}", or leave ${find} out`,
  }),
  homeNeedless: (find: string, tray: string): Sentences => ({
    expected: 'a second home',
    received: `${quoted(tray)}, where the record already puts ${find}`,
    mend: 'remove this line',
  }),
  lookAlike: (first: string, second: string): Sentences => ({
    expected: 'finds that can be told apart where their trays differ',
    received: `${first} and ${second}, alike in type, material, state and size`,
    mend: `leave out ${second}, or add "also" so that both trays are right for both`,
  }),
  tooFew: (finds: number, least: number): Sentences => ({
    expected: `${least} finds or more`,
    received: String(finds),
    mend: 'name more finds',
  }),
  tooMany: (finds: number, most: number, band: string): Sentences => ({
    expected: `at most ${most} finds at ages ${band}`,
    received: String(finds),
    mend: 'use "leave-out", or choose an older band',
  }),
  minutesUnder: (minutes: number, least: number, finds: number): Sentences => ({
    expected: `about ${least} minutes for ${finds} finds`,
    received: `${minutes} minutes`,
    mend: `write "minutes: ${least}", or use fewer finds`,
  }),
};
