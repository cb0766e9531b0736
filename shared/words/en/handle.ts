import type { Entry } from '../entry.ts';

/** The words of a handling session on screen. Nothing in it is right or wrong. */
export const handle = {
  question: {
    bands: { '4-5': 'What can you find out with your hands?', '5-7': 'What can your hands find out?' },
    otherwise: 'What can you find out with the thing in your hand?',
  },
  howTo: {
    bands: {
      '4-5': 'Take the piece from the tray. Look, feel, listen. Then put it down.',
      '5-7': 'Take the piece from the tray. Look, feel, listen. Then put it down.',
    },
    otherwise: 'Take each piece in turn. Press what you have done, put it down, then pass on.',
  },
  pairsHow: {
    bands: {
      '4-5': 'One of you holds it. The other asks. Then change over.',
      '5-7': 'One of you holds it. The other asks. Then change over.',
    },
    otherwise:
      'One of you holds the piece and says what is there; the other reads what to look for. Then change over.',
  },
  handsHow:
    'The screen says what to look, feel and listen for. At the end key in hands: which piece would you ask about?',
  ways: 'Way to do it',
  wayAlone: 'Alone',
  wayPairs: 'In pairs',
  wayHands: 'Hands up',
  rulesTitle: 'Before you touch',
  ruleTray: {
    bands: { '4-5': 'Keep it over the tray.', '5-7': 'Keep it over the tray.' },
    otherwise: 'Stay seated, and keep it low over the tray.',
  },
  ruleOne: 'One piece at a time.',
  rulePass: {
    bands: { '4-5': 'Put it down. Then the next one.', '5-7': 'Put it down. Do not hand it on.' },
    otherwise: 'Put it down before you pass it on; never from hand to hand.',
  },
  ruleEdge: {
    bands: { '4-5': 'Never slide a finger along it.', '5-7': 'Never slide a finger along a side.' },
    otherwise: 'Hold it by its faces. Never slide a finger along an edge.',
  },
  ruleBroken: {
    bands: { '4-5': 'If it breaks, stop. Call the adult.', '5-7': 'If it breaks, stop. Call the adult.' },
    otherwise: 'If something breaks: hands off, stand back, call the adult.',
  },
  ruleWash: {
    bands: { '4-5': 'Wash your hands at the end.', '5-7': 'Wash your hands at the end.' },
    otherwise: 'Wash your hands with soap at the end, and before you eat.',
  },
  passing: 'The pieces, in the order they are passed',
  piece: 'Piece {number}',
  pieceMet: 'Piece {number}, met',
  pieceLine: 'Piece {number} of {count}',
  original: 'the find itself',
  replica: 'a copy in the same stuff',
  bluntReplica: 'a copy with no edge',
  sizeLine: '{length} × {width} × {thickness} mm',
  sizeOf: 'The find is {length} × {width} × {thickness} mm',
  pitLine: 'pit {pit}',
  holdTitle: 'Hold it this way',
  look: 'Look',
  feel: 'Feel',
  listen: 'Listen',
  didLook: 'We looked',
  didFeel: 'We felt',
  didListen: 'We listened',
  earlier: 'Piece before',
  passOn: 'Put it down, next piece',
  lastDone: 'That was the last piece.',
  askTitle: {
    bands: {
      '4-5': 'Which one do you like to ask about?',
      '5-7': 'Which piece would you ask about?',
    },
    otherwise: 'Which piece would you ask the archaeologist about?',
  },
  handsFor: 'Hands for {answer}',
  handsMore: 'One more hand for {answer}',
  handsFewer: 'One hand fewer for {answer}',
  readRecord: 'Read the record',
  notYet: 'Meet one piece first.',
  recordTitle: 'Record card',
  recordMet: {
    one: 'You met {count} of {all} pieces.',
    other: 'You met {count} of {all} pieces.',
  },
  recordAsk: 'You would ask about piece {piece}: {name}.',
  recordAskHands: {
    one: 'Piece {piece}, {name}: {count} hand.',
    other: 'Piece {piece}, {name}: {count} hands.',
  },
  recordWhy: {
    bands: {
      '4-5': 'No score: nobody can hold a thing wrongly here.',
      '5-7': 'There is no score. What you felt is yours.',
    },
    otherwise:
      'There is no score: what you saw and felt cannot be right or wrong. It is where archaeologists start, too.',
  },
  colPiece: 'Piece',
  colYou: 'What you did',
  colRecord: 'The record says',
  colHow: 'How we know',
  nothingYet: 'not met',
  lookedAt: 'looked',
  felt: 'felt',
  listenedTo: 'listened',
  recordIs: '{name}, {material}; here {is}',
  signsSource: 'Signs: {source}',
  backToTray: 'Back to the tray',
  startAgain: 'Start again',
  clearAsk: 'Clear what was pressed and start again?',
  clearYes: 'Clear it',
  clearNo: 'Keep it',
  kept: 'Kept on this device as you go.',
  notKept: 'This device will not keep your place: leave the page open.',
} as const satisfies Readonly<Record<string, Entry>>;
