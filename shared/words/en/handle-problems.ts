import { quoted } from './problems.ts';

interface Sentences {
  readonly expected: string;
  readonly received: string;
  readonly mend: string;
}

/** A rule's own sentence inside another: a small letter first, no stop at the end. */
const within = (sentence: string): string =>
  sentence.replace(/\.$/, '').replace(/^[A-Z](?=[a-z])/, (letter) => letter.toLowerCase());

const NEARER: Readonly<Record<string, string>> = {
  look: ', and show it in a lidded case',
  'touch-held': ', so that a finger meets a flat face while the practitioner keeps hold',
  handle: ', over a lined tray',
};

/** Sentences for what can be wrong in a handle block. */
export const handleProblems = {
  findUnknown: (written: string, near: string | null, site: string): Sentences => ({
    expected: `the id of a find of ${site}`,
    received: quoted(written),
    mend:
      near === null ? 'write the id of a find; of a copy, the find that it copies' : `write ${quoted(near)}`,
  }),
  repeated: (find: string): Sentences => ({
    expected: 'each piece once',
    received: `${quoted(find)} a second time`,
    mend: 'remove one of the two',
  }),
  refused: (id: string, say: string, received: string, mend: string): Sentences => ({
    expected: `a handling table that keeps to rule ${id}: ${within(say)}`,
    received,
    mend: within(mend),
  }),
  tooSharp: (
    id: string,
    say: string,
    there: string,
    edge: string,
    age: number,
    nearer: string | null,
  ): Sentences => ({
    expected: `a handling table that keeps to rule ${id}: ${within(say)}`,
    received: `${quoted(there)} of class ${edge}, from age ${age}`,
    mend: `bring a blunt copy: write ${quoted('is: blunt-replica')}${
      nearer === null ? '' : `; or write ${quoted(`exposure: ${nearer}`)}${NEARER[nearer] ?? ''}`
    }`,
  }),
  notBlunt: (edge: string, age: number): Sentences => ({
    expected: 'a blunt copy, which is of class E0',
    received: `${quoted(`edge: ${edge}`)}, from age ${age}`,
    mend: 'write "E0" if it has no edge; if it has one, it is a replica, and not for this age',
  }),
  tooMany: (pieces: number, most: number, band: string): Sentences => ({
    expected: `at most ${most} pieces at ages ${band}`,
    received: String(pieces),
    mend: 'leave pieces out, or choose an older band',
  }),
  minutesUnder: (minutes: number, least: number, pieces: number): Sentences => ({
    expected: `about ${least} minutes for ${pieces} pieces, a tray between two`,
    received: `${minutes} minutes`,
    mend: `write "minutes: ${least}", or bring fewer pieces`,
  }),
};
