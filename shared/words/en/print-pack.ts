import type { Entry } from '../entry.ts';

/** The words of the print pack, its contents, and the switches that stand on every paper. */
export const printPack = {
  pack: 'Print pack',
  contents: 'Contents',
  packLead: 'All papers of this lesson in one document: press once to print.',
  packPress: 'Print all of it',
  packHow: 'Print from the browser, on A4 or Letter. Leave out what you do not need by its pages.',
  contentsLead:
    'Strike out what you leave behind. Nothing in here asks for a name, and no page makes a visit safe: the safety papers are for a responsible person to complete.',
  colPart: 'Part',
  colWhom: 'For',
  colCopies: 'Copies',
  colSheets: 'Sheets',
  colReady: 'Ready',
  large: 'Large print',
  largeHow: '18 point throughout, on screen and on paper',
  backs: 'Backs for the cards',
  backsHow: 'a page behind each page of cards; print on both sides, turned on the long edge',
  sheet: 'sheet',
  of: 'of',
  whomLead: 'Lead',
  whomTeacher: 'Teacher',
  whomPupils: 'Pupils',
  whomHelpers: 'Helpers',
  whomResponsible: 'Responsible person',
  whomEverybody: 'Everybody',
  copiesOne: '1',
  copiesPair: '1 set a pair',
  copiesEach: '1 each',
  copiesAdult: '1 an adult',
  copiesStation: '1 a station',
} as const satisfies Readonly<Record<string, Entry>>;
