import type { z } from 'zod';
import type { ChanceTally, Judgement, Keeps, KindPlace, Likeness, SiteView } from '../assemblage/index.ts';
import type { Stream } from '../chance/index.ts';
import type { Fault } from '../lesson/problem.ts';
import type { Band } from '../library/bands.ts';
import type { FindToDraw, StepDrawn } from '../drawing/index.ts';
import type { Library, Site } from '../library/library.ts';

/** What a kind may look at while it compiles one block. */
export interface CompileContext {
  readonly library: Library;
  /** The site the lesson names; its finds are the ones a block may name. */
  readonly site: Site;
  readonly bands: readonly Band[];
  /** A stream of its own for this block: adding another block never reshuffles it. */
  readonly chance: Stream;
}

/** What every compiled activity holds, whatever its kind. */
export interface ActivityBase {
  readonly id: string;
  readonly kind: string;
  readonly title: string;
  readonly minutes: number;
}

/** What every play holds: which activity it answers. */
export interface PlayBase {
  readonly activity: string;
}

/** What a scorer says of one play: agreement beyond guessing, with its working. */
export interface Score {
  /** 0 at guessing, 1 at full agreement; below 0 where guessing would do better; null where nothing can be said. */
  readonly score: number | null;
  /** The share (0 to 1) that guessing with the same choices would agree. */
  readonly guess: number | null;
  /** Everything needed to check the score by hand; plain JSON. */
  readonly working: Readonly<Record<string, unknown>>;
}

/** A card to cut out: what can be seen, never the answer. Lengths in mm. */
export interface Card {
  readonly id: string;
  readonly number: number;
  readonly plain: string;
  readonly drawing: FindToDraw;
}

/** An answer with its reason, and any other answer that can be argued. */
export interface AnswerRow {
  readonly number: number;
  readonly name: string;
  readonly drawing: FindToDraw;
  readonly answer: string;
  readonly because: string;
  readonly note: string | null;
  readonly also: readonly { readonly answer: string; readonly because: string }[];
}

/** A step's card to cut out. Its letter says nothing of its place; its drawing is named, or null where there is none. */
export interface StepCard {
  readonly letter: string;
  readonly name: string;
  readonly drawing: StepDrawn | null;
}

/** Steps that may change places with one step, by name, with what holds them on both sides. */
export interface FreeSteps {
  readonly step: string;
  readonly others: readonly string[];
  readonly bothAfter: readonly string[];
  readonly bothBefore: readonly string[];
}

/** A step in one right order: its room in the line, what it must follow, and why. */
export interface StepRow extends StepCard {
  readonly earliest: number;
  readonly latest: number;
  readonly after: readonly string[];
  readonly because: string | null;
}

/** What two or more pits hold, and what is asked of them. */
export interface ComparedPits {
  readonly title: string;
  /** By their ids; counts come in this order. */
  readonly pits: readonly string[];
  readonly rows: readonly {
    readonly name: string;
    readonly drawing: FindToDraw;
    readonly counts: readonly number[];
    /** Null where pairs are asked about. */
    readonly place: KindPlace | null;
  }[];
  readonly pairs: readonly {
    readonly pits: readonly [string, string];
    readonly likeness: number;
    readonly tally: ChanceTally;
    readonly record: Judgement;
  }[];
  /** The places offered, or null where pairs are asked about; then `by` says how likeness is measured. */
  readonly places: readonly KindPlace[] | null;
  readonly by: Likeness | null;
}

/** One printed sheet as data: the page decides how it looks, the kind decides what it says. */
export type Sheet =
  | ({ readonly part: 'compare-sheet'; readonly question: string | null } & ComparedPits)
  | ({
      readonly part: 'compare-answers';
      readonly keeps: Keeps | null;
      /** By kind. */
      readonly kindNames: Readonly<Record<string, string>>;
      readonly reading: string | null;
      readonly doubts: readonly string[];
      readonly site: SiteView | null;
    } & ComparedPits)
  | { readonly part: 'step-cards'; readonly title: string; readonly cards: readonly StepCard[] }
  | {
      readonly part: 'step-line';
      readonly title: string;
      readonly question: string | null;
      readonly places: number;
      /** Cards with drawings need taller places. */
      readonly isDrawn: boolean;
    }
  | {
      readonly part: 'step-answers';
      readonly title: string;
      readonly validOrders: number | string | null;
      readonly source: string;
      readonly rows: readonly StepRow[];
      readonly free: readonly FreeSteps[];
    }
  | { readonly part: 'cards'; readonly title: string; readonly cards: readonly Card[] }
  | {
      readonly part: 'pupil-sheet';
      readonly title: string;
      readonly question: string;
      readonly boxes: readonly { readonly name: string; readonly hint: string }[];
      readonly numbers: readonly number[];
    }
  | {
      readonly part: 'answers';
      readonly title: string;
      readonly question: string;
      /** No answer is fixed: the rows say what the record has, not what is right. */
      readonly isOpen: boolean;
      readonly rows: readonly AnswerRow[];
    };

/** A compiled activity, or none where a fault is an error. */
export interface Compiled<Activity> {
  readonly activity: Activity | null;
  readonly faults: readonly Fault[];
}

/** The contract every kind meets: four files, one entry in the registry. */
export interface Kind<
  Block,
  Activity extends ActivityBase,
  Play extends PlayBase,
  Outcome extends Score = Score,
> {
  readonly schema: z.ZodType<Block>;
  readonly playSchema: z.ZodType<Play>;
  readonly compile: (id: string, block: Block, context: CompileContext) => Compiled<Activity>;
  readonly score: (activity: Activity, play: Play) => Outcome;
  /** The play that agrees with the record throughout; the laws score it at 1. */
  readonly record: (activity: Activity) => Play;
  /** A play by guessing with a stream; the laws hold that its score averages 0. */
  readonly guess: (activity: Activity, chance: Stream) => Play;
  readonly paper: (activity: Activity) => readonly Sheet[];
  /** The finds it shows, for the list of lessons, the title block and the cautions; [] where it shows none. */
  readonly shows: (activity: Activity) => readonly FindToDraw[];
}
