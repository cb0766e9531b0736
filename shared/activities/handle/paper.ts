import type { Sheet } from '../kind.ts';
import type { HandleActivity } from './activity.ts';

/** A handling session on paper: a card to lay at each place, a sheet to draw on, what each piece tells. */
export function paperHandle({
  title,
  question,
  pieces,
  table,
  signsSource,
}: HandleActivity): readonly Sheet[] {
  return [
    {
      part: 'cards',
      title,
      cards: pieces.map(({ id, smallFind, plain, drawing }) => ({ id, number: smallFind, plain, drawing })),
    },
    {
      part: 'handle-sheet',
      title,
      question,
      pieces: pieces.map(({ id, smallFind, plain, is, edge, exposure, hold, prompts, drawing }) => ({
        id,
        smallFind,
        plain,
        is,
        edge,
        exposure,
        hold,
        prompts,
        drawing,
      })),
    },
    { part: 'handle-notes', title, question, pieces, table, signsSource },
  ];
}
