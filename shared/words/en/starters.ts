/** What stands in a block that has just been put in, until the lead writes their own. */
export const starters = {
  sortTitle: 'Which belong together?',
  compareTitle: 'In both, or only in one?',
  orderTitle: 'What came first?',
  orderFirst: 'First this',
  orderThen: 'Then this',
  orderLast: 'This last',
  orderWhy: 'Say why it cannot come sooner.',
  estimateTitle: 'How long did it take?',
  barterTitle: 'Come home with an axe',
} as const;
