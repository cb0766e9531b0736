import type { Entry } from '../entry.ts';

/** The words of a gathering of a whole class on screen. */
export const barterClass = {
  classHowMany: 'How many pupils?',
  classMore: 'One pupil more',
  classFewer: 'One pupil fewer',
  classDeal: 'Deal the cards',
  classDealt: { one: 'Cards for {count} pupil', other: 'Cards for {count} pupils' },
  classPrint: 'Print these cards',
  classPossible: 'Everybody can go home better off.',
  classNotPossible: 'Not everybody can go home better off with these cards. Deal for one more or one fewer.',
  classBest: 'Added up, the class can gain {best} at most. Swapping with no plan gains about {aimless}.',
  classPlan: 'One way for all to gain, by numbers of cards',
  classPlanShow: 'Show a way for all to gain',
  classHow:
    'Print the cards and give one to each pupil. Swap the things, not the cards: write what you take on a slip. Stop after {minutes} minutes.',
  classSteps:
    'Each pupil: what you have now, less what you began with, by the numbers on your card. That is your gain.',
  classHands: 'Hands up for each gain',
  classGain: 'Gained {gain}',
  classGainHands: 'Hands for a gain of {gain}',
  classGainMore: 'One more hand for a gain of {gain}',
  classGainFewer: 'One hand fewer for a gain of {gain}',
  classRead: 'Read the record',
  classLine: 'The class gained {total} of {best} that was possible.',
  classBetter: '{better} of {pupils} went home better off.',
  classWorking:
    'Your share: {total} ÷ {best} = {share}. Swapping with no plan: {guess}. Beyond that: ({share} − {guess}) ÷ (1 − {guess}) = {score}.',
  classTooMany: 'That is more hands than pupils. Count again.',
  classTooMuch: 'That is more than these cards allow. Ask each pupil to reckon again.',
  recordTitle: 'Record card',
  workingTitle: 'See the working',
  kept: 'Kept on this device as you go.',
  notKept: 'This device will not keep your place: leave the page open.',
  classNone: 'Key in the hands first.',
  classBack: 'Back to the hands',
  cardHas: 'You have',
  cardWants: 'You would like',
  cardNote: 'A number says how much a thing matters to you.',
} as const satisfies Readonly<Record<string, Entry>>;
