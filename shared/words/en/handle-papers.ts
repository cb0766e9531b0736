import type { Entry } from '../entry.ts';

/** The words of a handling session on paper: the helper's card, the poster, the pupil sheet, the notes. */
export const handlePapers = {
  helperCard: "Helper's card",
  helperHow: 'Cut along the grey line. One card lies at each table of pieces.',
  poster: 'Table poster',
  posterHow: 'Print it on its side and stand it on the table.',
  who: 'Who must be there',
  whoPractitioner: {
    one: '{count} practitioner, hands on the pieces and nothing else',
    other: '{count} practitioners, hands on the pieces and nothing else',
  },
  whoNone: 'no practitioner by these rules, for pieces without an edge in reach',
  whoSupervisors: {
    one: '{count} other adult, eyes on the children',
    other: '{count} other adults, eyes on the children',
  },
  whoChildren: {
    one: '{count} child at this table at once, seated',
    other: 'at most {count} children at this table at once, seated',
  },
  whoMark:
    'Numbers are our judgement (ASM), for the youngest, age {age}. Local rules that ask for more come first.',
  order: 'In this order',
  hold: 'Hold it this way',
  forBands: 'ages {bands}: {words}',
  edges: 'Edges',
  edgesNone: 'Nothing here has an edge that cuts, by type. Check every piece that morning all the same.',
  broken: 'If a piece breaks',
  brokenSteps:
    'Say “hands off”. Children stand back from the table. The adult picks up every piece with a gloved hand or card, into the lidded case, and counts. Nobody looks for bits on the floor with bare hands. Write it down and tell the lead. The table opens again when the count is right.',
  wash: 'Hands',
  washSteps:
    'Soap and water for 20 seconds after the table, and before any food. Wipes between pieces do not count as washing.',
  washMark: '20 s: NHS and CDC advice, from memory (FM).',
  practiceMark: 'The drill is common practice (CP), no source.',
  count: 'Count out {count} pieces. Count back {count} before the group moves.',
  posterLook: 'look only',
  posterTouch: 'the adult holds it',
  posterTray: 'Low over the tray',
  posterOne: 'One at a time',
  posterEdge: 'Hold it by its faces',
  posterPass: 'Put it down, then pass on',
  posterBreak: 'It broke? Hands off. Call the adult.',
  posterWash: 'Wash your hands',
  sheetHow: 'Draw what you see. Write what you feel and hear. Nothing here is wrong.',
  sheetDraw: 'Draw it',
  sheetAsk: 'Which piece would you ask about? What would you ask?',
  notesLead: 'There is no right answer to what pupils see and feel. This is what the record says.',
  notesPiece: 'Piece',
  notesNear: 'How near',
  notesSays: 'What it tells',
  notesLook: 'only looked at',
  notesTouchHeld: 'touched while the adult keeps hold',
  notesHandle: 'lifted over the tray',
  numbered: '{number}. {name}',
  notesNearLine: '{near}; class {edge}',
  promptsMark: 'Questions and ways of holding: common practice (CP), no source, unless the lead wrote them.',
  notesLine: {
    one: 'Pupils meet {count} piece: {question}',
    other: 'Pupils meet {count} pieces: {question}',
  },
  notesDuring:
    'At the table, a tray between two. Ask what they notice before you say what it is. Count out, count back, wash.',
  notesScore:
    'A handling session has no score. What a pupil sees and feels in the hand cannot be right or wrong; the card says which pieces were met and what the group would ask.',
  safetyTitle: 'Pieces in the hand',
  safetyLead:
    'These pieces are met in the lesson. By the rules none is too sharp for the youngest to meet so near. That is no promise that it is safe: each piece is checked on the day.',
  safetyPiece: 'Piece',
  safetyIs: 'What lies on the tray',
  safetyClass: 'Class',
  safetyNear: 'How near a child comes',
} as const satisfies Readonly<Record<string, Entry>>;
