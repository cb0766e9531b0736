import type { Entry } from '../entry.ts';

/** The words of the ages a lesson is for: choosing one, and what it changes. */
export const bands = {
  choose: 'Ages of this lesson',
  chooseHere: 'Ages of this activity: {title}',
  all: 'all together',
  one: '{from}–{to}',
  lead: 'Ages',
  asChoose: 'Choose among comparisons.',
  asNumber: 'Say a number.',
  asInterval: 'Say a least and a most.',
  inActivity: '{title} – {line}',
  asMany: 'More than one way to answer.',
  workingShown: 'The working behind a score can be opened.',
  workingHidden: 'Counts, without the working behind a score.',
  noScore: 'No score: nothing here is right or wrong.',
  viewsShown: 'Worth is looked at in several ways.',
  wordsYounger: 'Words of the trade in the shorter way.',
  wordsOlder: 'Words of the trade in the longer way.',
  own: 'What is done here is kept apart from the other ages.',
  now: 'Now for {ages}. {changes}',
  nowAll: 'Now for all ages together. {changes}',
  title: '{title}, {ages}',
} as const satisfies Readonly<Record<string, Entry>>;
