import type { Sheet } from './kind.ts';

/** Sheets that are cards to cut out. */
export const CARD_PARTS = [
  'cards',
  'step-cards',
  'trader-cards',
  'want-cards',
] as const satisfies readonly Sheet['part'][];

/** Sheets that pupils write on. */
export const PUPIL_PARTS = [
  'pupil-sheet',
  'ledger',
  'class-answer',
  'estimate-sheet',
  'estimate-tally',
  'step-line',
  'compare-sheet',
  'handle-sheet',
  'talk-sheet',
] as const satisfies readonly Sheet['part'][];

/** Sheets that only a lesson with pieces in the hand makes. */
export const TABLE_PARTS = ['handle-notes'] as const satisfies readonly Sheet['part'][];
