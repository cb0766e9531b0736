import type { FindToDraw } from '../../drawing/index.ts';
import type { Band } from '../../library/bands.ts';
import type { EdgeClass, Exposure, StationUse } from '../../safety/index.ts';
import type { ActivityBase } from '../activity-base.ts';

/** What lies on the tray: the find itself, a copy in the same stuff, or a copy without an edge. */
export const PIECE_IS = ['original', 'replica', 'blunt-replica'] as const;
export type PieceIs = (typeof PIECE_IS)[number];

/** How near a child may come in a handling session: nothing is worked with there. */
export const SESSION_EXPOSURES = ['look', 'touch-held', 'handle'] as const satisfies readonly Exposure[];

export const SENSES = ['look', 'feel', 'listen'] as const;
export type Sense = (typeof SENSES)[number];

/** A sentence for the bands that read it so, and whose words it is in. */
export interface SaidLine {
  readonly bands: readonly Band[];
  readonly words: string;
  /** Written by the lead, or derived from the find by common practice. */
  readonly by: 'lead' | 'practice';
}

/** What to do with one sense; youngest band first. */
export interface Prompt {
  readonly sense: Sense;
  readonly says: readonly SaidLine[];
}

/** A piece on the tray. */
export interface HandlePiece {
  /** The find's id; of a copy, the id of what it copies. */
  readonly id: string;
  readonly smallFind: number;
  readonly pit: string;
  /** What can be seen, before its name is told. */
  readonly plain: string;
  readonly name: string;
  readonly material: string;
  /** What tells it: the sign of its type. */
  readonly sign: string;
  readonly note: string | null;
  readonly is: PieceIs;
  readonly edge: EdgeClass;
  readonly exposure: (typeof SESSION_EXPOSURES)[number];
  /** Youngest band first. */
  readonly hold: readonly SaidLine[];
  readonly prompts: readonly Prompt[];
  readonly drawing: FindToDraw;
}

/** A handling session: pieces that go round a table. Nothing in it can be right or wrong. */
export interface HandleActivity extends ActivityBase {
  readonly kind: 'handle';
  readonly question: string | null;
  /** In the order in which they are passed. */
  readonly pieces: readonly HandlePiece[];
  /** The table, as the safety rules read it. */
  readonly table: StationUse;
  /** How the signs are known. */
  readonly signsSource: string;
}
