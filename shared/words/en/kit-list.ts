import type { Entry } from '../entry.ts';

/** The words of the kit list. */
export const kitWords = {
  title: 'Kit list',
  lead: 'Summed over the lesson and the stations it states. Counts are worked out here (DER) from the lesson and the safety rules; sets and trays for each pair are our judgement (ASM). Add spares, and what your own site needs.',
  counted: 'Counted',
  colThing: 'What',
  colFor: 'For {pupils}',
  colPacked: 'Packed',
  colBack: 'Back',
  pieces: 'Finds or replicas on the trays',
  piecesLead: 'Write how many of each go out, and how many came back.',
  colPieces: 'Piece',
  colStation: 'Station',
  colEdge: 'Sharpest class',
  colOut: 'Out',
  list: 'For {what}',
  listMark: '({status}: {source})',
  'pupil-sheets': 'Pupil sheets, one each',
  pencils: 'Pencils',
  'card-sets': 'Sets of {cards} cards: {title}',
  answers: 'Copies of the answers, one an adult',
  'station-cards': 'Station cards',
  trays: 'Rimmed trays with lining, one a pair',
  'eye-sets': 'Eye protection that fits, for everyone within the line',
  'first-aiders': 'First aiders among the adults',
} as const satisfies Readonly<Record<string, Entry>>;
