import type { Entry } from '../entry.ts';

/** The words of the evaluation slips. Questions are our own judgement (ASM). */
export const evaluation = {
  title: 'Evaluation slips',
  lead: 'Cut along the lines. What this is for: to make the next visit better, and to tell whoever pays for it, in counts of a whole group, what it was good for. Nobody is marked by it. No names, no initials, no school on a pupil’s slip; leave them all out if you like. The questions are our judgement (ASM), not a test with a published key.',
  leadCount:
    'Count crosses for the whole group and write the counts on the teacher’s slip; then the slips can go. Do not make a percentage of fewer than 20.',
  pupilTitle: 'After today',
  pupilHow: {
    bands: {
      '4-5': 'A grown-up reads this out. Put a cross under the words that are true for you.',
      '5-7': 'A grown-up reads this out. Put a cross under the words that are true for you.',
    },
    otherwise: 'Put one cross in each row. No names. It is not a test.',
  } satisfies Entry,
  learnt: {
    bands: { '4-5': 'I found something out.', '5-7': 'I found something out.' },
    otherwise: 'I know something now that I did not know before.',
  } satisfies Entry,
  why: {
    bands: { '4-5': 'I said why.', '5-7': 'I said why I thought so.' },
    otherwise: 'I can say how we know it.',
  } satisfies Entry,
  mind: {
    bands: { '4-5': 'I had a turn.', '5-7': 'I changed my mind about something.' },
    otherwise: 'I changed my mind about something, and I know why.',
  } satisfies Entry,
  again: {
    bands: { '4-5': 'I want to do it again.', '5-7': 'I would like to do it again.' },
    otherwise: 'I would do more of this.',
  } satisfies Entry,
  scaleLow: { bands: { '4-5': 'no', '5-7': 'no' }, otherwise: 'not at all' } satisfies Entry,
  scaleSome: { bands: { '4-5': 'a bit', '5-7': 'a bit' }, otherwise: 'a little' } satisfies Entry,
  scaleMore: { bands: { '4-5': '', '5-7': '' }, otherwise: 'mostly' } satisfies Entry,
  scaleHigh: { bands: { '4-5': 'yes', '5-7': 'yes' }, otherwise: 'very much' } satisfies Entry,
  ask: {
    bands: { '4-5': 'Draw one thing from today.', '5-7': 'Draw or write one thing from today.' },
    otherwise: 'One thing I would ask an archaeologist now:',
  } satisfies Entry,
  statement: 'What is said',
  teacherTitle: 'For the teacher',
  teacherWhat:
    'For the people who ran it, to change the lesson by. No names. What you write may be quoted without yours or the school’s.',
  pupilsCounted: 'Pupils who handed in a slip',
  outcomesMet: 'Which of these did your pupils practise, as you saw it?',
  outcomesNone: 'The lesson claims no outcome. Which did it meet, if any?',
  rateTitle: 'How was it?',
  rateReading: 'The reading was',
  rateTime: 'The time was',
  rateThinking: 'The thinking was',
  tooHard: 'too hard',
  fitting: 'about right',
  tooEasy: 'too easy',
  tooLong: 'too long',
  tooShort: 'too short',
  change: 'What would you change?',
  afterwards: 'What will you do with it afterwards?',
  safe: 'Anything that did not feel safe? Tell the lead today, and the responsible person in writing.',
} as const satisfies Readonly<Record<string, Entry>>;
