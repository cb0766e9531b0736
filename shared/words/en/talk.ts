import type { Entry } from '../entry.ts';

/** The words of a talk on screen and on paper. No stance is right. */
export const talk = {
  howAlone: {
    bands: {
      '4-5': 'Say what you think. Then hear what others think.',
      '5-7': 'Say what you think. Then hear what others think.',
    },
    otherwise: 'Say what you think. Read what others think. Then say it again: you may move, or stay.',
  },
  howPairs: {
    bands: { '4-5': 'Tell each other what you think.', '5-7': 'Tell each other what you think, and why.' },
    otherwise:
      'Each of you argues for one voice, whatever you think yourself. Then say where the two of you stand.',
  },
  howHands: 'Count hands before the voices are read out, and again after. Nobody is asked why they moved.',
  howNone: {
    bands: {
      '4-5': 'Hear what others think. Talk about it.',
      '5-7': 'Hear what others think. Talk about it.',
    },
    otherwise: 'Read what others think, and talk about what would change your mind.',
  },
  ways: 'Way to talk',
  wayAlone: 'Alone',
  wayPairs: 'In pairs',
  wayHands: 'Hands up',
  beforeTitle: {
    bands: { '4-5': 'What do you think?', '5-7': 'What do you think?' },
    otherwise: 'Where do you stand?',
  },
  voicesTitle: {
    bands: { '4-5': 'What others say', '5-7': 'What others say' },
    otherwise: 'What archaeologists argue',
  },
  evidenceTitle: {
    bands: { '4-5': 'What could we look for?', '5-7': 'What could we look for?' },
    otherwise: 'What would change our mind?',
  },
  evidenceHow: {
    bands: { '4-5': 'Choose one.', '5-7': 'Choose one.' },
    otherwise: 'If this were found. Choose what would change your mind most.',
  },
  afterTitle: {
    bands: { '4-5': 'What do you think now?', '5-7': 'What do you think now?' },
    otherwise: 'Where do you stand now?',
  },
  fromPractice: 'said in the trade; no source',
  fromInvented: 'invented for this lesson',
  fromWork: '{citation} ({status})',
  handsFor: 'Hands for: {answer}',
  handsMore: 'One more hand for: {answer}',
  handsFewer: 'One hand fewer for: {answer}',
  readRecord: 'Read the record',
  notYet: 'Say something first.',
  recordTitle: 'Record card',
  colWho: 'Who',
  colStance: 'Stance',
  colBefore: 'Before',
  colAfter: 'After',
  stoodBefore: 'Before: {stance}',
  stoodAfter: 'After: {stance}',
  stayed: 'You stayed where you stood.',
  movedOne: 'You moved.',
  movedNone: 'The count is as before. People may have changed places.',
  moved: { one: 'At least {count} hand moved.', other: 'At least {count} hands moved.' },
  notCompared: 'The two counts are not of as many hands, so nothing is said of who moved.',
  weighsOne: 'What would change your mind: {evidence}',
  weighsTitle: 'What would change our mind',
  hands: { one: '{count} hand', other: '{count} hands' },
  recordWhy: {
    bands: {
      '4-5': 'Nobody knows. So there is no score.',
      '5-7': 'Nobody knows for sure. So there is no score.',
    },
    otherwise:
      'There is no score: archaeologists do not agree, and more than one answer can be argued. To move is not better than to stay.',
  },
  backToTalk: 'Back to the talk',
  startAgain: 'Start again',
  clearAsk: 'Clear what was said and start again?',
  clearYes: 'Clear it',
  clearNo: 'Keep it',
  kept: 'Kept on this device as you go.',
  notKept: 'This device will not keep your place: leave the page open.',
  sheetBefore: 'Before. Tick where you stand:',
  sheetAfter: 'After. Tick where you stand now:',
  sheetWhy: 'Why? What would change your mind?',
  notesLead:
    'No stance is right. Count hands before and after; never say who was right, and never ask for names.',
  notesStances: 'Stances, in no order of merit:',
  notesHands: 'Hands before ____ and after ____',
  notesLine: 'Pupils talk about a question with no right answer: {question}',
  notesDuring: 'Hear every voice before anyone decides. Ask what we would have to find to think otherwise.',
  notesScore:
    'A talk has no score. The card says where a group stood before and after, and what would change its mind; moving is no better than staying.',
} as const satisfies Readonly<Record<string, Entry>>;
