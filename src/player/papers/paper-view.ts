import type { Drawn } from '../drawn.ts';
import type { StripView, SubjectView, TallyView } from '../beside-view.ts';

/** A cell of a table: what it says, smaller lines under it, and a drawing beside it. */
export interface CellView {
  readonly text: string;
  readonly more?: readonly string[];
  readonly drawn?: Drawn;
}

/** A thing on a card, with a small note of what it matters. */
export interface ThingView {
  readonly drawn: Drawn;
  readonly words: string;
  readonly aside: string | null;
}

/** Things of one sort on a trader's card, under a label. */
export interface ThingsView {
  readonly label: string;
  readonly things: readonly (ThingView & { readonly rank: number | null })[];
}

/** A card to cut out. */
export type CardView =
  | {
      readonly card: 'find';
      readonly drawn: Drawn;
      readonly plain: string;
      readonly size: string;
      readonly number: number;
    }
  | {
      readonly card: 'step';
      readonly drawn: Drawn | null;
      readonly name: string;
      readonly letter: string;
    }
  | {
      readonly card: 'trader';
      readonly name: string;
      readonly has: ThingsView;
      readonly wants: ThingsView;
      readonly notes: readonly string[];
    }
  | {
      readonly card: 'want';
      readonly number: number;
      readonly has: ThingsView;
      readonly wants: ThingsView;
    };

/** Every piece a paper of a pack is put together from, by name. */
export interface Blocks {
  readonly text: { readonly text: string; readonly look?: 'quiet' | 'strong' | 'small' | 'question' };
  readonly heading: { readonly text: string };
  readonly list: { readonly items: readonly string[]; readonly isOrdered?: true };
  readonly terms: {
    readonly terms: readonly { readonly term: string; readonly means: string; readonly older?: string }[];
  };
  readonly table: {
    readonly heads: readonly string[];
    readonly rows: readonly (readonly CellView[])[];
    readonly narrow?: readonly number[];
    readonly isNameWide?: boolean;
    /** Said of a table too wide for a phone, which is moved sideways in a frame of its own. */
    readonly wide?: string;
  };
  readonly pit: {
    readonly plan: Drawn;
    /** Where each find lies in the plan, in mm. */
    readonly finds: readonly {
      readonly drawn: Drawn;
      readonly xMm: number;
      readonly yMm: number;
      readonly turnDegrees: number;
      readonly enlarged: number;
    }[];
    readonly planCaption: string;
    readonly section: Drawn;
    readonly sectionCaption: string;
  };
  /** A question with room to write the answer. */
  readonly room: { readonly text: string };
  readonly numbers: { readonly numbers: readonly number[] };
  readonly trays: { readonly trays: readonly { readonly name: string; readonly hint: string }[] };
  readonly ticks: { readonly words: readonly string[] };
  readonly choices: { readonly words: readonly string[] };
  readonly places: { readonly count: number; readonly isDrawn: boolean; readonly ends: readonly string[] };
  /** A table to fill in by hand: `cells` stand in each row, empty ones to be written in. */
  readonly blanks: {
    readonly look: 'ledger' | 'compare-ticks' | 'answers tally';
    /** The first head may be for readers of the screen alone. */
    readonly heads: readonly string[];
    readonly isFirstUnseen?: boolean;
    readonly rows: readonly { readonly name: string; readonly cells: readonly string[] }[];
    /** Said of a table too wide for a phone. */
    readonly wide?: string;
  };
  readonly scale: {
    readonly marks: readonly {
      readonly x: string;
      readonly text: string | null;
      readonly anchor: 'start' | 'middle' | 'end';
    }[];
  };
  readonly pieces: {
    readonly draw: string;
    readonly pieces: readonly {
      readonly plain: string;
      readonly drawn: Drawn;
      readonly lies: string;
      readonly senses: readonly { readonly name: string; readonly says: string }[];
    }[];
  };
  readonly voices: { readonly voices: readonly { readonly who: string; readonly says: string }[] };
  readonly subject: SubjectView;
  readonly tally: TallyView;
  readonly strip: StripView & { readonly id: string };
  readonly cards: { readonly cards: readonly CardView[] };
}

export type BlockView = { [Name in keyof Blocks]: { readonly block: Name } & Blocks[Name] }[keyof Blocks];

/** A section of a paper. */
export interface SectionView {
  readonly id: string;
  readonly title: string;
  readonly aside?: string;
  /** Begins a sheet of its own, in the larger print of pupils. */
  readonly isSheet?: boolean;
  readonly blocks: readonly BlockView[];
}

/** A paper as it is shown and printed from a pack. */
export interface PaperView {
  readonly path: string;
  readonly name: string;
  /** For whom, and how many. */
  readonly whom: string;
  /** Stands before everything else; the title is null where nothing in the lesson is sharp. */
  readonly caution: { readonly title: string | null; readonly text: string };
  readonly sections: readonly SectionView[];
}

/** The papers of a pack, with the words around them. */
export interface PapersView {
  readonly title: string;
  readonly lead: string;
  readonly show: string;
  readonly hide: string;
  readonly print: string;
  /** Beside the box to tick for large print. */
  readonly large: string;
  /** Left blank on paper, beside the particulars. */
  readonly date: string;
  readonly papers: readonly PaperView[];
}
