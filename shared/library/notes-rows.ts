import type { Status } from './status.ts';

/** When a row of the teacher notes is wanted, and how it is known. */
export interface NotesRow {
  readonly id: string;
  /** Kinds of activity it goes with; [] for any. */
  readonly kinds: readonly string[];
  /** Words of the glossary that bring it; [] for any. */
  readonly words: readonly string[];
  readonly status: Status;
  /** Ids of sources, the main one first; [] for a lead's own. */
  readonly sources: readonly string[];
}

export interface KitRow extends NotesRow {
  readonly text: string;
}

/** A question to talk about, and what archaeologists argue. */
export interface TalkRow extends NotesRow {
  readonly ask: string;
  readonly argue: string;
}

/** A mistaken idea that is often met, and what one might answer. */
export interface MistakenRow extends NotesRow {
  readonly thought: string;
  readonly reply: string;
}

/** What to change so that a pupil can take part. */
export interface AdaptationRow extends NotesRow {
  readonly for: string;
  readonly do: string;
}

/** What teacher notes are made from, beside the lesson itself. */
export interface NotesRows {
  readonly kit: readonly KitRow[];
  readonly talk: readonly TalkRow[];
  readonly misconceptions: readonly MistakenRow[];
  readonly adaptations: readonly AdaptationRow[];
}

/** No rows at all: notes then hold what the lesson says. */
export const NO_ROWS: NotesRows = { kit: [], talk: [], misconceptions: [], adaptations: [] };
