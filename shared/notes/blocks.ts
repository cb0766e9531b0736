import type { FindToDraw, PitToCut, StepDrawn } from '../drawing/index.ts';

/** A drawing beside a text. Where drawings cannot be shown the text says all that is needed. */
export type NotesPicture = { readonly find: FindToDraw } | { readonly step: StepDrawn };

/** A cell of a table: what it says, then smaller lines under it. */
export interface NotesCell {
  readonly text: string;
  readonly more?: readonly string[];
  readonly picture?: NotesPicture;
}

/** A piece of a section. Plain data: a page and a text file show the same. */
export type NotesBlock =
  | { readonly block: 'text'; readonly text: string; readonly isQuiet?: true; readonly isStrong?: true }
  | { readonly block: 'heading'; readonly text: string }
  | { readonly block: 'list'; readonly items: readonly string[]; readonly isOrdered?: true }
  /** Words with what they mean; where two ages are told differently, the older way second. */
  | {
      readonly block: 'terms';
      readonly terms: readonly { readonly term: string; readonly means: string; readonly older?: string }[];
    }
  | {
      readonly block: 'table';
      readonly heads: readonly string[];
      /** The first cell of a row names it. */
      readonly rows: readonly (readonly NotesCell[])[];
      /** Which columns are narrow: figures, times. */
      readonly narrow?: readonly number[];
      /** The first column holds most of the text. */
      readonly isNameWide?: true;
    }
  | {
      readonly block: 'pit';
      readonly pit: PitToCut;
      readonly finds: readonly FindToDraw[];
      readonly planCaption: string;
      readonly sectionCaption: string;
    };

/** A section with its heading. */
export interface NotesSection {
  readonly id: string;
  readonly title: string;
  /** A smaller word after the title. */
  readonly aside?: string;
  readonly blocks: readonly NotesBlock[];
}

/** Teacher notes as plain data. */
export interface NotesDocument {
  readonly title: string;
  readonly part: string;
  readonly site: string;
  readonly particulars: readonly { readonly name: string; readonly value: string }[];
  /** Stands before everything else. */
  readonly caution: string;
  readonly sections: readonly NotesSection[];
}

export const text = (words: string): NotesBlock => ({ block: 'text', text: words });
export const quiet = (words: string): NotesBlock => ({ block: 'text', text: words, isQuiet: true });
export const heading = (words: string): NotesBlock => ({ block: 'heading', text: words });
export const list = (items: readonly string[]): NotesBlock => ({ block: 'list', items });
export const cell = (words: string, more: readonly string[] = []): NotesCell =>
  more.length === 0 ? { text: words } : { text: words, more };
