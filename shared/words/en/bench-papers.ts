import type { Entry } from '../entry.ts';

/** The words of the papers on the Bench. */
export const benchPapers = {
  title: 'Papers',
  lead: 'Made from the visit as it is written now, in this browser; nothing is sent anywhere. In the box that opens you can choose a printer, or save a PDF.',
  not: 'There is nothing to print yet. The papers are there when nothing stops the lesson: see To mend.',
  opening: 'The papers are laid out when the finds have been read.',
  size: 'Paper',
  large: 'Large print',
  largeHow: '18 point throughout',
  backs: 'Backs for the cards',
  backsHow: 'when the cards are printed alone, on both sides, turned on the long edge',
  all: 'Print them all together',
  allHow: 'All together they come with a list of contents before them.',
  count: 'Count the sheets',
  counting: 'The papers are laid out and counted.',
  counted: 'Counted for {size}: about {sheets} sheets in all, one copy of each.',
  countedLarge: 'Counted for {size} in large print: about {sheets} sheets in all, one copy of each.',
  line: 'For: {whom}. Copies: {copies}.',
  sheets: { one: 'About {count} sheet.', other: 'About {count} sheets.' },
  look: 'Look at',
  away: 'Put away',
  print: 'Print',
  printing: '{name} is handed to the printer’s box of this browser.',
  printed: 'The box for {name} is shut again. What is printed stands on no list here.',
  failed:
    'The papers could not be made here ({because}). On the command line: pitlore papers FILE --out DIR.',
  frame: 'The papers as they print',
} as const satisfies Readonly<Record<string, Entry>>;

/** What each paper is for, by its path. */
export const paperPurposes: Readonly<Record<string, string>> = {
  'teacher-notes': 'What happens when, the words, the answers and why, and what to talk about.',
  'pupil-sheet': 'What pupils write and draw on.',
  cards: 'Finds, steps or traders to cut out and lay.',
  answers: 'The answers alone, for whoever stands at a table.',
  'helper-card': 'Half a sheet for the adult who hands the pieces out.',
  'table-poster': 'Stands on the table: the pieces, and how they are touched.',
  safety: 'Edges, stations, adults and hazards, with what is usually done.',
  'risk-assessment': 'A draft for the responsible person to complete and sign. Not valid before.',
  'station-cards': 'One for each station: what to set out, how to run it, what to watch for.',
  signs: 'Words to hang, one to a page.',
  'kit-list': 'What is carried, counted for a class, to tick on the way out and back.',
  evaluation: 'Slips to cut apart, without names, to better the next visit by.',
};
