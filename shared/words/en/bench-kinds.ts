/** What each kind of activity is, for a lead who chooses one. */
export const kindMeanings: Readonly<Record<string, string>> = {
  sort: 'finds lifted from a pit into finds trays',
  compare: 'pits side by side: what lies in both, and would chance alone do it?',
  order: 'the steps of a making, laid in the order of the work',
  estimate: 'how long, how heavy, how many: a guess, and how we know',
  barter: 'no money: swap until you hold what you came for',
  handle: 'real or replica things in the hand',
  talk: 'a question with no right answer',
};
