import type { PieceIs } from '../activities/scorers.ts';
import type { Exposure } from '../safety/index.ts';
import { catalogues } from '../words/index.ts';

const { handle, handlePapers } = catalogues.en;

/** How near a child comes, in words. Nothing is worked with in a handling session. */
const near: Readonly<Record<Exclude<Exposure, 'use'>, string>> = {
  look: handlePapers.notesLook,
  'touch-held': handlePapers.notesTouchHeld,
  handle: handlePapers.notesHandle,
};

const lies: Readonly<Record<PieceIs, string>> = {
  original: handle.original,
  replica: handle.replica,
  'blunt-replica': handle.bluntReplica,
};

/** What lies on the tray: the find itself, or a copy. */
export const lieWords = (is: PieceIs): string => lies[is];

/** What lies on the tray, and how near a child comes to it. */
export const pieceWords = ({
  is,
  exposure,
}: {
  readonly is: PieceIs;
  readonly exposure: Exclude<Exposure, 'use'>;
}): { readonly lies: string; readonly near: string } => ({ lies: lies[is], near: near[exposure] });
