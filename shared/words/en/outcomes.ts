import type { Entry } from '../entry.ts';

/** The page of outcomes, and what a lesson says of itself to catalogues. */
export const outcomes = {
  lesson: 'lesson',
  title: 'Outcomes',
  lead: 'What school frameworks ask that lessons about making and pits can meet, in our own words: ask the publisher for theirs. Each says how it is known, and which lessons here have earned a claim to it.',
  marks:
    'In what is said of a framework: RF found again in the work named, FM from memory, DER worked out here.',
  contents: 'Frameworks',
  browse: 'Show only',
  browseFramework: 'Framework',
  browseAge: 'Age',
  browseSubject: 'Subject',
  browseKind: 'Activity',
  browseAny: 'any',
  browseAll: 'Show all',
  browseTold: 'Shown: {count} of {all}. Met here: {met}.',
  group: '{ages}: {subject}',
  shownBy: 'Shown by {kinds}.',
  count: { one: '{count} outcome, {met} met here', other: '{count} outcomes, {met} met here' },
  terms: 'The publisher’s terms: {licence}',
  from: '{publisher}, {version}',
  ages: 'For {ages}',
  agesNone: 'For ages no lesson here is for',
  agesKnown: 'How the ages of its stages are known: {known}.',
  sources: 'Sources',
  sourceSeen: '{citation} ({seen})',
  sourceAt: 'source {number}, {at}',
  columnOutcome: 'Outcome',
  columnKnown: 'How it is known',
  columnLessons: 'Lessons',
  inLesson: '{title} ({grade})',
  none: 'none yet',
  never: 'no lesson here may claim it',
  top: 'Back to the frameworks',
} as const satisfies Readonly<Record<string, Entry>>;

/** Subjects that a framework shortens, in full. */
export const subjectNames: Readonly<Record<string, string>> = {
  hass: 'humanities and social sciences',
  physical: 'physical development',
  psed: 'personal, social and emotional development',
};
