import type { Entry } from '../entry.ts';

/** The words of the site itself: frames, lists, papers. */
export const site = {
  productName: 'Pitlore',
  strapline: 'Finds from the trench, made into lessons for board, tablet or paper',
  skipToContent: 'Skip to the lesson',
  navigation: 'Pages',
  lessons: 'Lessons',
  sources: 'Sources',
  help: 'Help',
  footer: 'Wendle Marsh is invented: its pits, finds, numbers and people. The figures are real and sourced.',
  offlineKeeping:
    'The site is being kept on this device, to be used without a signal. Stay on this page until it is.',
  offlineReady: {
    one: 'Ready for no signal. This device keeps {count} lesson with its papers, the Bench, the Day sheet, the outcomes, sources and help, as made on {date} ({size} MB).',
    other:
      'Ready for no signal. This device keeps {count} lessons with their papers, the Bench, the Day sheet, the outcomes, sources and help, as made on {date} ({size} MB).',
  } satisfies Entry,
  offlineNewer:
    'A newer copy, made on {date}, has come. It takes over once every page of this site has been closed. Your visits and what pupils did stay as they are.',
  offlineNone:
    'No copy of the site is kept on this device, so it will not open here without a signal. A copy needs a secure address (https), room on the device, and a window that is not private.',
  invented: 'an invented site',
  homeLead:
    'An archaeologist digs ahead of building work, and teaches between trenches. Each lesson here was compiled from one text file about a pit and what lay in it. Answers are worked out from the record of the finds, and every reason can be followed to its source.',
  lessonsHere: { one: '{count} lesson here', other: '{count} lessons here' },
  minutesLong: '{minutes} min',
  lessonBroken: 'This lesson has problems and cannot run yet.',
  lessonBrokenSee: 'See what to mend',
  teacherNotes: 'Teacher notes',
  cards: 'Cards to cut out',
  pupilSheet: 'Pupil sheet',
  answers: 'Answers',
  papers: 'On paper',
  papersLead: 'Everything the lesson needs without a screen.',
  titleSite: 'Site',
  titlePit: 'Pit',
  titleFor: 'For',
  titleTime: 'Time',
  rodLabel: 'How far down you are',
  rodRead: 'Read',
  rodEnd: 'Talk',
  sharpTitle: 'Sharp stone cuts.',
  sharpText: {
    bands: {
      '4-5': 'Only the expert makes stone tools. You look and you listen.',
      '5-7': 'Only the expert makes stone tools. You look and you listen.',
    },
    otherwise:
      'These are drawings. Where there is real flint, touch only what the adult hands you, flat on your palm. Only a practitioner knaps, and never a pupil.',
  } satisfies Entry,
  sharpTeacher:
    'Flint edges cut, and flint dust harms lungs. Drawn cards need no special care; real finds or replicas need your employer’s own risk assessment, local rules and a competent practitioner. They come before anything printed here.',
  makingText: {
    bands: { '4-5': '', '5-7': '' },
    otherwise:
      'Grinding makes dust that harms lungs, and axes are for those trained to use them. Neither is for pupils.',
  } satisfies Entry,
  makingTeacher:
    'Nothing here is to be tried: no knapping, no grinding wet or dry, no felling. Estimates and pictures need no stone.',
  problemsTitle: 'This lesson cannot run yet',
  problemsLead: {
    one: '{count} thing to put right in {file}. The rest of the site is not touched by it.',
    other: '{count} things to put right in {file}. The rest of the site is not touched by them.',
  },
  problemPlace: 'Line {line}, place {column}',
  problemExpected: 'Expected',
  problemReceived: 'Found',
  problemMend: 'To mend it',
  error: 'Stops the lesson',
  caution: 'Worth a look',
  sourcesLead:
    'Where figures, methods and reasons come from, and how each is known. Nothing here is beyond question: the mark says how sure we can be.',
  sourcesFor: 'Used for',
  sourcesWhere: 'Reference',
  sourcesMark: 'How it is known',
  statusRF: 'found again in the work named',
  statusFM: 'from memory',
  statusASM: 'our judgement',
  statusDER: 'worked out here',
  statusCP: 'common practice, no source',
  statusinvented: 'invented for demonstration',
  signsTitle: 'Signs in the hand',
  signsLead: 'What tells one thing from another. Common practice of the trade, no source.',
  limitsTitle: 'What each age is asked',
  limitsLead:
    'Our judgement, to be tried with real groups. A lesson beyond these gets a caution, not a refusal.',
  limitAges: 'Ages',
  limitMinutes: 'Minutes at one activity',
  limitTrays: 'Trays',
  limitFinds: 'Finds',
  backToLesson: 'Back to the lesson',
  notesInThreeLines: 'In three lines',
  notesSort: 'Pupils lift {finds} finds from {pits} and decide: {question}',
  notesCompare: 'Pupils look at pits {pits} and say of {kinds} kinds of find in which of them each lies.',
  notesCompareChance:
    'Pupils say how alike {pairs} pairs of pits are, and whether chance alone could do it; then they shuffle and look again.',
  notesOrder: 'Pupils lay {steps} cards in the order of the work. Right orders: {orders}.',
  notesOrdersMany: 'more than we can count',
  notesPits: { one: 'pit {pits}', other: 'pits {pits}' },
  notesRecord: 'The record card then says what the record says, and how we know.',
  notesAloud: 'Read the words of this lesson aloud: they were not measured for pupils who read alone.',
  notesFirst: 'Everything can be done on screen, hands up from the carpet, or on paper alone.',
  notesBefore: 'Before',
  notesBeforeText:
    'Print the cards and the pupil sheet, or open the lesson once so that it works without a signal.',
  notesDuringCompare:
    'Alone, in pairs, or hands up. Ask what else could make two pits alike, and what we would expect to see if nobody meant it.',
  notesDuringOrder:
    'Alone, in pairs, or hands up. Ask what each step needs before it, and which could be done at any time.',
  notesDuringText: 'Alone, in pairs, or hands up. Ask for the sign in the hand before the name.',
  notesAfterText: 'Read the record card together. Ask what would change our mind.',
  notesAnswers: 'The answers, and why',
  notesFind: 'Find',
  notesAnswer: 'Answer',
  notesWhy: 'How we know',
  notesAlso: 'also {answer}: {because}',
  notesPicked: 'These are picked finds, not all that lay in the pit. Real pits are mostly waste flakes.',
  notesDate: '{label}, about {from} to {to} BC ({status}: {note})',
  notesScore:
    'The score is agreement beyond guessing: 0 is what dealing the same choices at random would get, 1 is the record. A pupil who puts everything in one tray scores 0. Show pupils the count, not the score.',
  planCaption:
    'Pit {pit} in plan, with the finds of this lesson. Small finds are drawn larger than large ones.',
  sectionCaption: 'Pit {pit} in section, top first:',
  fillLine: '({context}) {description}',
  notesScoreCompare:
    'A comparison: each place that the record uses weighs the same, so that one answer for everything scores 0. For chance, half the score is whether the more alike of two pairs was called so, half the judgement after the shuffles. “Hardly chance” says not this chance; it never says on purpose.',
  notesScoreOrder:
    'An order: each pair of steps where one must wait for the other counts once. 0 is laying by chance, 1 is any right order, −1 is backwards. Pairs that may change places never count.',
  notesScoreTitle: 'What the score says',
  notesStoryTitle: 'The site, to read out',
  notesTimeLeft: 'Talk, and whatever took longer',
  claimsTitle: 'What the lesson practises',
  claimsLead:
    'Planned, until a group has played. Outcomes are in our own words: ask the publisher for theirs.',
  claimsOutcome: 'Outcome',
  claimsGrade: 'How far',
  claimsWhere: 'Where, and what a pupil will have done',
  claimsVouched: 'by the lead’s word',
  cardsNone: 'This lesson needs no cards. The pupil sheet and the answers have all of it.',
  cardsHow: 'Cut along the grey lines. Drawings on one sheet share no scale: read the size on each card.',
  sheetHow: 'Lay the cards on the trays, or write the number of each find in its tray.',
  sheetWhy: 'Choose one. How do you know?',
  dateBlank: 'Date',
  ownTraysAnswer: 'No fixed answer: pupils make trays of their own. The record has these values.',
  notFoundTitle: 'Nothing lies here',
  notFoundText: 'This page is not on the plan. The list of lessons is.',
} as const satisfies Readonly<Record<string, Entry>>;
