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
  look: 'and show the piece in a lidded case',
  'touch-held': 'so that a finger meets a flat face while the practitioner keeps hold',
  handle: 'over a lined tray',
};

/** Sentences for what a lesson states of its visit. */
export const visitProblems = {
  findUnknown: (written: string, near: string | null, site: string): Sentences => ({
    expected: `a find of ${site}, or a type of object`,
    received: quoted(written),
    mend:
      near === null
        ? 'name a find of the site, or a type of object such as "blunt-replica"'
        : `write ${quoted(near)}`,
  }),
  refused: (id: string, say: string, there: string, mend: string): Sentences => ({
    expected: `a station that keeps to rule ${id}: ${within(say)}`,
    received: quoted(there),
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
    expected: `a station that keeps to rule ${id}: ${within(say)}`,
    received: `${quoted(there)} with pieces of class ${edge}, from age ${age}`,
    mend:
      nearer === null
        ? 'bring blunt copies instead'
        : `write ${quoted(`exposure: ${nearer}`)} ${NEARER[nearer] ?? ''}, or bring blunt copies, as "blunt-replica" under finds`,
  }),
};
