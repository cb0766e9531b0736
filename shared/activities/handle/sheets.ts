import type { StationUse } from '../../safety/index.ts';
import type { HandlePiece } from './activity.ts';

type SheetPiece = Pick<
  HandlePiece,
  'id' | 'smallFind' | 'plain' | 'is' | 'edge' | 'exposure' | 'hold' | 'prompts' | 'drawing'
>;

/** For a pupil: a row a piece, what to look, feel and listen for, room to draw and write. */
export interface HandleSheet {
  readonly part: 'handle-sheet';
  readonly title: string;
  readonly question: string | null;
  readonly pieces: readonly SheetPiece[];
}

/** For the lead: what each piece is, how near a child comes, what it tells. */
export interface HandleNotes {
  readonly part: 'handle-notes';
  readonly title: string;
  readonly question: string | null;
  readonly pieces: readonly (SheetPiece & Pick<HandlePiece, 'name' | 'material' | 'sign' | 'note'>)[];
  readonly signsSource: string;
  /** The table, as the safety rules read it. */
  readonly table: StationUse;
}
