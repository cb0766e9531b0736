import { findsInWords } from './finds-in.ts';
import { quoted } from './problems.ts';

const shown = (value: string | number | undefined): string =>
  value === undefined ? 'nothing' : typeof value === 'number' ? String(value) : quoted(value);

interface Difference {
  readonly field: string;
  readonly there: string | number | undefined;
  readonly here: string | number | undefined;
}

const MOST_TOLD = 4;

/** Sentences of taking a finds list into a site that is there. */
export const findsIntoWords = {
  // Questions of a place.
  noPlace: (): string => 'no place',
  placeNotSaid: (site: string): string =>
    `The row says neither pit nor context. In which fill of ${site} did it lie?`,
  pitNotThere: (pit: string, context: number): string =>
    `The site has no pit ${quoted(pit)}, where the row puts context ${context}. Where did it lie?`,
  contextNotThere: (context: number): string => `The site has no context ${context}. Where did it lie?`,
  fillNotThere: (context: number, pit: string): string =>
    `Pit ${pit} of the site has no context ${context}. Where did it lie?`,
  otherPit: (context: number, holder: string, pit: string): string =>
    `Context ${context} is a fill of ${holder} in the site, and the row says ${pit}. Where did it lie?`,
  asTheSite: (context: number, pit: string): string => `${context} in ${pit}, as the site has it`,
  nearestFill: (context: number, pit: string): string => `${context} in ${pit}, the nearest the site has`,
  likeName: (context: number, pit: string): string => `${context} in ${pit}, whose name is near`,
  fillOf: (context: number, pit: string): string => `${context} in ${pit}`,
  newFill: (context: number, pit: string): string => `a new fill ${context} in ${pit}`,
  newPit: (context: number, pit: string): string => `a new pit ${pit} with a fill ${context}`,

  // Questions of a number.
  numberThere: (id: string, differences: readonly Difference[]): string => {
    const told = differences
      .slice(0, MOST_TOLD)
      .map(
        ({ field, there, here }) =>
          `${findsInWords.fieldName(field)} ${shown(there)} there, ${shown(here)} here`,
      );
    const more = differences.length - told.length;
    const all = more > 0 ? [...told, `${more} more`] : told;
    return `Find ${id} is there already and differs: ${all.join('; ')}. Which shall stand?`;
  },
  numberInRow: (number: number, row: number): string =>
    `Small find ${number} is in row ${row} too, in the same place. Which number has this one?`,
  leaveOut: (id: string): string => `leave the row out: ${id} stays as it is`,
  leaveOutAs: (id: string): string => `leave the row out: it is there as ${id}`,
  replace: (id: string): string => `put what the row says in the record of ${id}`,
  replaceThere: (id: string): string => `it is ${id}: keep its place, and put the rest in its record`,
  numberOn: (number: number): string => `another find: number it ${number}`,
  leaveRowOut: (): string => 'leave this row out',

  // What became of a row.
  same: (id: string): string => `it is there already, the same: ${id}`,
  leadLeftOut: (): string => 'you left it out',

  // Comments in a site file.
  newPitComment: (): readonly string[] => [
    'STAND-INS, made for a finds list: this pit’s cut number, centre, level, size and profile, and its fills.',
    'Replace them from your own plan and section.',
  ],
  newFillComment: (): readonly string[] => [
    'STAND-INS, made for a finds list: this fill’s description, thickness and place among the others.',
  ],
} as const;
