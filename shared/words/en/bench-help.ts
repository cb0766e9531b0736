/** A first visit in ten steps, and the words of the Bench. */
export const benchHelp = {
  title: 'A first visit in ten steps',
  lead: 'Nothing can be broken: every step can be taken back, and what you write is kept as you go.',
  done: 'done',
  steps: [
    {
      id: 'begin',
      name: 'Begin a visit',
      how: 'On the shelf: give it a name and press Begin. The short lesson with notes in it is a good start.',
    },
    {
      id: 'title',
      name: 'Say what it is',
      how: 'Under The visit, press The head, and write a title of your own.',
    },
    {
      id: 'bands',
      name: 'Say for whom',
      how: 'In the head too: tick the ages, and how many minutes you have in all.',
    },
    {
      id: 'finds',
      name: 'Bring your finds',
      how: 'Finds in: paste your list and press Take the finds. Or stay with Wendle Marsh, which is invented, for now. Photographs puts your own pictures in the place of our drawings.',
    },
    {
      id: 'activity',
      name: 'Put something in',
      how: 'At the foot of the visit, or let Draft a lesson choose from your finds and say why.',
    },
    {
      id: 'words',
      name: 'Write what you say',
      how: 'Press Words and write what you read out, or what pupils read.',
    },
    {
      id: 'mend',
      name: 'Mend what is to be mended',
      how: 'To mend lists it, with the place. Often one press does it.',
    },
    {
      id: 'page',
      name: 'Look at it as pupils do',
      how: 'Show the page, and choose an age: it is the lesson itself, and can be played.',
    },
    {
      id: 'pack',
      name: 'Make the pack, print the papers',
      how: 'Make the pack is one file for the memory stick. Under Papers, print the notes, cards, safety sheet and kit list.',
    },
    {
      id: 'file',
      name: 'Save it as a file',
      how: 'Save the visit as one file: your own copy, finds and photographs with it, to keep or to send to a colleague. Browsers may throw away what is not visited for some weeks; a file stays.',
    },
  ],
  wordsTitle: 'Words used here',
  words: [
    { word: 'visit', means: 'what you do with one group: activities, words between them, and how long.' },
    { word: 'lesson file', means: 'the visit as one text file. The Bench writes it for you.' },
    { word: 'head', means: 'the first lines of the file: title, site, ages, minutes.' },
    { word: 'find, pit, site', means: 'an object from the ground; the hole it lay in; the place.' },
    {
      word: 'photograph',
      means:
        'your own picture of a find, shrunk here and silent about place, device and time; credit beneath it.',
    },
    {
      word: 'scale bar',
      means: 'the short ruler drawn under a picture: how long a find is beside it.',
    },
    { word: 'activity, kind', means: 'something pupils do; which sort of thing it is.' },
    { word: 'band', means: 'an age band: what is asked, and in which words, goes by it.' },
    {
      word: 'outcome, claim',
      means: 'what a school framework asks for; your statement that the visit does it.',
    },
    { word: 'problem, mend', means: 'something wrong in the file; how to put it right.' },
    {
      word: 'record card',
      means: 'what pupils see at the end: what they said, what the record says, how we know.',
    },
    {
      word: 'papers',
      means: 'all that is printed: notes, sheets and cards, safety papers, station cards, signs, kit list.',
    },
    { word: 'pack', means: 'the lesson in one file that opens without a network.' },
  ],
} as const;

/** The name of a step. */
export type StepId = (typeof benchHelp.steps)[number]['id'];
