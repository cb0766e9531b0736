import type { CardView, Blocks as PackBlocks, PaperView } from '../player/papers/paper-view.ts';
import type { Drawn } from '../player/drawn.ts';
import type { Picture } from '../player/lesson-view.ts';
import type { Head } from '../player/TitleBlock.tsx';

/** A cell of a table on a paper: what it says, and what stands around that. */
export interface GridCell {
  readonly text: string;
  /** Said more quietly behind it: a mark, a note. */
  readonly aside?: string;
  /** Stands out in a frame: the strictest of several. */
  readonly standsOut?: string;
  /** A box to tick before it. */
  readonly hasTick?: true;
  readonly isNumber?: true;
  /** Room to write. */
  readonly isWrite?: true;
}

/** A control of a hazard with the mark of how it is known. */
export interface ControlSaid {
  readonly text: string;
  readonly mark: string;
}

/** A hazard with what is usually done, strongest first. */
export interface HazardSaid {
  readonly name: string;
  readonly who: string | null;
  readonly controls: readonly ControlSaid[];
  readonly never: string | null;
  readonly decides: string | null;
}

/** A piece on a table, as its helper reads it. */
export interface HelperPiece {
  readonly drawn: Drawn;
  readonly name: string;
  readonly lies: string;
  readonly holds: readonly string[];
}

/** Pieces that only a visit's papers are put together from: a pack has no room for them. */
interface MoreBlocks {
  readonly caution: { readonly strong: string; readonly text: string };
  readonly grid: {
    /** Names of its look, as the site's papers have them. */
    readonly look: string;
    readonly heads: readonly string[];
    readonly rows: readonly (readonly GridCell[])[];
  };
  /** Names with room beside each to be completed by hand. */
  readonly form: { readonly names: readonly string[]; readonly blank: string };
  readonly hazards: { readonly hazards: readonly HazardSaid[]; readonly isForHelper?: true };
  readonly marked: { readonly items: readonly { readonly strong: string; readonly text: string }[] };
  readonly columns: { readonly items: readonly string[] };
  readonly facts: { readonly facts: readonly { readonly name: string; readonly value: string }[] };
  readonly never: {
    readonly title: string;
    readonly lines: readonly string[];
    readonly after: string | null;
  };
  readonly station: {
    readonly setOut: { readonly title: string; readonly items: readonly string[] };
    readonly run: {
      readonly title: string;
      readonly steps: readonly string[];
      readonly after: string | null;
      readonly note: string;
    };
  };
  readonly lists: {
    readonly lists: readonly {
      readonly title: string;
      readonly aside: string;
      readonly items: readonly string[];
    }[];
  };
  readonly risk: {
    readonly heads: {
      readonly hazard: string;
      readonly usual: string;
      /** Columns for sentences, to be completed. */
      readonly wide: readonly string[];
      readonly person: string;
    };
    /** What is completed in the last column, one under the other. */
    readonly short: readonly string[];
    readonly hazards: readonly HazardSaid[];
    /** Rows of the place itself, with nothing in them but these words. */
    readonly siteRows: readonly string[];
    readonly blank: string;
  };
  readonly sign: { readonly large: string; readonly beneath: string | null };
  readonly 'teacher-slip': {
    readonly title: string;
    readonly what: string;
    readonly counted: string;
    readonly outcomesTitle: string;
    readonly outcomes: readonly { readonly summary: string; readonly from: string }[];
    readonly rateTitle: string;
    readonly rates: readonly { readonly asked: string; readonly answers: readonly string[] }[];
    readonly asks: readonly string[];
    readonly safe: string;
  };
  readonly 'pupil-slips': {
    readonly title: string;
    readonly of: string;
    readonly how: string;
    readonly statement: string;
    readonly scale: readonly string[];
    readonly statements: readonly string[];
    readonly ask: string;
  };
  readonly helper: {
    readonly title: string;
    readonly aside: string;
    readonly count: string;
    readonly order: string;
    readonly pieces: readonly HelperPiece[];
    readonly who: { readonly title: string; readonly lines: readonly string[]; readonly mark: string };
    readonly rules: readonly { readonly title: string; readonly text: string }[];
    readonly mark: string;
    readonly never: string;
  };
  readonly poster: {
    readonly title: string;
    readonly pieces: readonly { readonly drawn: Drawn; readonly near: string }[];
    readonly rules: readonly string[];
    readonly caution: { readonly strong: string; readonly text: string };
  };
  /** Cards of one sheet. */
  readonly 'card-page': { readonly title: string; readonly cards: readonly CardView[] };
  /** What lies behind a sheet of cards. */
  readonly 'card-backs': {
    readonly title: string;
    readonly site: string;
    readonly count: number;
    readonly isDrawn: boolean;
    readonly aside: string;
    readonly set: string;
  };
  /** A page left empty, so that backs lie behind their cards. */
  readonly 'empty-page': { readonly text: string };
}

/** Every piece a paper of a visit is put together from, by name. */
export type PrintBlocks = PackBlocks & MoreBlocks;

export type PrintBlock = {
  [Name in keyof PrintBlocks]: { readonly block: Name } & PrintBlocks[Name];
}[keyof PrintBlocks];

/** The names of the pieces that packs do not have. */
export type MoreName = keyof MoreBlocks;
export type MoreBlock = { [Name in MoreName]: { readonly block: Name } & MoreBlocks[Name] }[MoreName];

/** Pieces that stand together, under a heading or straight on the paper. */
export interface PrintPart {
  readonly id: string;
  /** How it prints; null for pieces that stand straight on the paper. */
  readonly look: 'paper-section' | 'paper-section keeps' | 'paper-section station-card' | null;
  readonly title: string | null;
  readonly blocks: readonly PrintBlock[];
}

/** A paper of a visit that a pack has not. */
export interface VisitPaper {
  readonly path: string;
  readonly name: string;
  /** Stands before everything else; null where the paper has a caution of its own. */
  readonly caution: PaperView['caution'] | null;
  readonly parts: readonly PrintPart[];
}

/** The papers of a visit in the order they are wanted: a pack's own, and those beyond. */
export type PrintedPaper =
  { readonly is: 'pack'; readonly paper: PaperView } | { readonly is: 'beyond'; readonly paper: VisitPaper };

/** All papers of a visit as plain data, with the drawings they point to. */
export interface PrintedVisit {
  readonly language: string;
  readonly head: Head;
  /** Left blank on paper, beside the particulars. */
  readonly date: string;
  readonly drawings: readonly (Picture & { readonly id: string })[];
  readonly papers: readonly PrintedPaper[];
  /** What they are called where several are printed together. */
  readonly together: string;
  /** The running foot of each as style, by path, where it is printed alone. */
  readonly feet: Readonly<Record<string, string>>;
  /** Their running feet where several are printed together: each counts its own sheets too. */
  readonly feetTogether: string;
}

/** Sizes of paper: ISO 216 A4 and the American letter. */
export const PAPER_SIZES = ['A4', 'Letter'] as const;
export type PaperSize = (typeof PAPER_SIZES)[number];

/** How papers are printed. */
export interface PrintChoices {
  readonly size: PaperSize;
  readonly isLarge: boolean;
  readonly hasBacks: boolean;
}

/** What the frame of the papers is told: these papers, laid out so; to be looked at, printed, or counted. */
export interface PrintAsk extends PrintChoices {
  readonly number: number;
  readonly act: 'look' | 'print' | 'count';
  readonly visit: PrintedVisit;
  /** The papers shown, by path: one, or all. */
  readonly paths: readonly string[];
}

/** What the frame says back. */
export type PrintAnswer =
  | { readonly answer: 'shown' | 'printed'; readonly number: number }
  | {
      readonly answer: 'counted';
      readonly number: number;
      readonly sheets: readonly { readonly path: string; readonly sheets: number }[];
    };
