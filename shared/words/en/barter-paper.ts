import type { Entry } from '../entry.ts';

/** The words of a gathering on paper, and those beside it: the question, the talk, the lead’s answer. */
export const barterPaper = {
  question: 'Come home with {aim}.',
  classQuestion: 'Can everybody go home better off?',
  talkTitle: 'Talk: where is this game wrong about the past?',
  talkLead:
    'Nobody knows how people at a place like this passed things on. This game is a way to think about it, not a picture of it.',
  talkOne: 'Here everybody knows exactly what they want. Do you?',
  talkTwo:
    'Here a swap is over when it is done. Many people give first and remember who owes whom. Which feels better among friends?',
  talkThree:
    'Here people want things for their use. What about a thing that once belonged to somebody’s grandmother?',
  talkFour:
    'Hours of work are one view of what a thing is worth. Gift, debt and standing are others. Which would you go by?',
  talkFive:
    'Things found far from where their stone comes from show that they travelled. They do not show how.',
  talkRule: 'Rule',
  talkFrom: 'Where it comes from',
  rulesTitle: 'The rules of this game, and where each comes from',
  traderCardsHow:
    'Cut the cards out. Each person round the fire holds one, and says yes only to what they would rather have. Move the things as slips of paper or write them in the ledger.',
  cardRanks: 'A thing higher in the list is worth giving a lower one for. A second of the same matters less.',
  cardShut: 'Swaps only with those who gave something first.',
  cardReturns: 'Takes a gift, and gives {thing} back later.',
  ledgerHow: 'Write each swap on a line. Both of you must end up with something you would rather have.',
  ledgerStart: 'You begin with {things}.',
  ledgerAim: 'Come home with {aim}.',
  ledgerNumber: 'Number',
  ledgerWith: 'With',
  ledgerGave: 'I gave',
  ledgerTook: 'I took',
  ledgerWhy: 'Why did they say yes?',
  ledgerEnd: 'Could it be done in fewer swaps? Who is better off now?',
  answerPar: {
    one: 'The fewest is {par}. There is one such chain:',
    other: 'The fewest is {par}. There are {count} such chains; this is one:',
  },
  answerOther: 'Any chain in which everyone said yes is right. A longer one is a longer way, not a mistake.',
  notesGathering: {
    one: 'Pupils meet {count} person round a fire and swap until they have {aim}. No money. The fewest swaps: {par}.',
    other:
      'Pupils meet {count} people round a fire and swap until they have {aim}. No money. The fewest swaps: {par}.',
  },
  notesClass:
    'Every pupil has a card with one thing to swap and a list of wants. Cards are printed for {pupils} pupils; another number can be dealt on screen.',
  cardNumber: 'Card {number}',
  notesDuring: 'Alone, in pairs, or hands up. Ask for the reason of a no, and who is better off after a yes.',
  notesScore:
    'The score is how near a chain came to the fewest swaps, beyond swapping with no plan: 0 is no plan, 1 is the fewest. Swapping on and on, or keeping everything, gains nothing. Show pupils the chain, not the score.',
  sheetHow:
    'Swap with anyone, as often as you like, but only when both of you want it. Write what you end with.',
  sheetThing: 'Thing',
  sheetMatters: 'How much it matters to me',
  sheetBegan: 'I began with',
  sheetNow: 'I have now',
  sheetGain: 'My gain: now, less what I began with',
  sheetWhy: 'Who gave you what you have now? Why did they say yes? Could you both have done better?',
  classCardsHow: {
    one: 'Cards for {count} pupil. Cut along the grey lines.',
    other: 'Cards for {count} pupils. Cut along the grey lines.',
  },
  classPairs: 'Straight swaps by which all gain',
  classRings: 'The best exchange, ring by ring: each takes from the next',
} as const satisfies Readonly<Record<string, Entry>>;
