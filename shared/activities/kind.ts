import type { z } from 'zod';
import type { ChanceTally, Judgement, Keeps, KindPlace, Likeness, SiteView } from '../assemblage/index.ts';
import type { Stream } from '../chance/index.ts';
import type { NumberIdea } from '../curriculum/index.ts';
import type { Fault, Path } from '../lesson/problem.ts';
import type { Band } from '../library/bands.ts';
import type { FindToDraw, StepDrawn } from '../drawing/index.ts';
import type { Library, Site } from '../library/library.ts';
import type { Setting, StationUse } from '../safety/index.ts';
import type { ActivityBase } from './activity-base.ts';
import type { HandleNotes, HandleSheet } from './handle/sheets.ts';
import type { TalkNotes, TalkSheet } from './talk/sheets.ts';
import type { NumberUse } from '../words/en/number-problems.ts';
import type { EstimateAnswer, EstimateSheet, EstimateTally } from './estimate/sheets.ts';

export type { ActivityBase } from './activity-base.ts';

/** What a kind may look at while it compiles one block. */
export interface CompileContext {
  readonly library: Library;
  /** The site the lesson names; its finds are the ones a block may name. */
  readonly site: Site;
  readonly bands: readonly Band[];
  /** Where the lesson is held. */
  readonly setting: Setting;
  /** A stream of its own for this block: adding another block never reshuffles it. */
  readonly chance: Stream;
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

/** A thing that passes from hand to hand, with its words: "2 hides". */
export interface SheetThing {
  readonly good: string;
  readonly words: string;
}

/** Someone at a gathering, on a card to cut out. */
export interface TraderCard {
  readonly name: string;
  readonly isPupil: boolean;
  readonly has: readonly SheetThing[];
  /** Most wanted first, with what a first, second, third matters. */
  readonly wants: readonly (SheetThing & {
    /** 1 for what is wanted most; alike where two are wanted alike. */
    readonly rank: number;
    readonly worths: readonly number[];
  })[];
  /** Swaps only after a gift. */
  readonly isShut: boolean;
  /** What is given back for a gift; null where gifts are not taken. */
  readonly returns: string | null;
}

/** A pupil's card where a whole class swaps. */
export interface WantCard {
  readonly number: number;
  readonly has: SheetThing & { readonly worth: number };
  readonly wants: readonly (SheetThing & { readonly worth: number })[];
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
    }
  | EstimateSheet
  | EstimateTally
  | EstimateAnswer
  | HandleSheet
  | HandleNotes
  | TalkSheet
  | TalkNotes
  | {
      readonly part: 'trader-cards';
      readonly title: string;
      /** Numbers stand beside the wants; else their order says all. */
      readonly showsWorths: boolean;
      readonly cards: readonly TraderCard[];
    }
  | { readonly part: 'want-cards'; readonly title: string; readonly cards: readonly WantCard[] }
  | {
      readonly part: 'ledger';
      readonly title: string;
      readonly question: string;
      readonly begins: readonly string[];
      readonly aim: string;
      readonly rows: number;
    }
  | {
      readonly part: 'chain-answer';
      readonly title: string;
      readonly question: string;
      readonly par: number;
      readonly chains: number;
      /** One of the shortest chains; `takes` is empty for a gift, `gives` for its return. */
      readonly steps: readonly { readonly with: string; readonly gives: string; readonly takes: string }[];
    }
  | {
      readonly part: 'class-answer';
      readonly title: string;
      readonly question: string;
      readonly pupils: number;
      readonly possible: boolean;
      readonly bestTotal: number;
      readonly aimlessTotal: number;
      /** Numbers of cards that swap straight, so that all gain. */
      readonly straight: readonly (readonly number[])[];
      /** Numbers of cards in the rings of the best exchange. */
      readonly rings: readonly (readonly number[])[];
    };

/** A compiled activity, or none where a fault is an error. */
export interface Compiled<Activity> {
  readonly activity: Activity | null;
  readonly faults: readonly Fault[];
}

/** What a compiled activity asks, for the claims a lesson makes: conditions it meets, and how many things it counts. */
export interface Asks {
  readonly met: readonly string[];
  /** Conditions it meets only in the bands that are asked so. */
  readonly metIn?: readonly { readonly bands: readonly Band[]; readonly met: readonly string[] }[];
  /** How many things a pupil handles or counts at most; null where none are counted. */
  readonly things: number | null;
}

/** A number a pupil has to read, enter or compare in an activity. */
export interface AskedNumber {
  readonly value: number;
  readonly form: 'whole' | NumberIdea;
  readonly what: NumberUse;
  /** The key of the block it comes from. */
  readonly path: Path;
  /** The bands that meet it; left out where all do. */
  readonly bands?: readonly Band[];
}

/** What every kind has, scored or not. */
export interface KindBase<Block, Activity extends ActivityBase, Play extends PlayBase> {
  readonly schema: z.ZodType<Block>;
  readonly playSchema: z.ZodType<Play>;
  readonly compile: (id: string, block: Block, context: CompileContext) => Compiled<Activity>;
  readonly paper: (activity: Activity) => readonly Sheet[];
  /** What it asks, for the claims a lesson makes; a kind without it meets no condition of its own. */
  readonly asks?: (activity: Activity, library: Library) => Asks;
  /** What a new block of the kind holds, from the finds of a site; a kind without it begins with a title and minutes. */
  readonly starter?: (site: Site) => Readonly<Record<string, unknown>>;
  /** The activity as one band is asked it; a kind without it asks every band alike. */
  readonly forBand?: (activity: Activity, band: Band) => Activity;
  /** The largest numbers its pupils meet, each with the key it comes from; a kind without it asks for none. */
  readonly numbers?: (activity: Activity, block: Block) => readonly AskedNumber[];
  /** The finds it shows, for the list of lessons, the title block and the cautions; [] where it shows none. */
  readonly shows: (activity: Activity) => readonly FindToDraw[];
  /** The table of pieces that children meet in it, for the adults and the hazards; left out where nothing is handed out. */
  readonly table?: (activity: Activity) => StationUse;
}

/** A kind with a record to agree with. */
export interface ScoredKind<
  Block,
  Activity extends ActivityBase,
  Play extends PlayBase,
  Outcome extends Score = Score,
> extends KindBase<Block, Activity, Play> {
  readonly isScored: true;
  readonly score: (activity: Activity, play: Play) => Outcome;
  /** The play that agrees with the record throughout; the laws score it at 1. */
  readonly record: (activity: Activity) => Play;
  /** A play by guessing with a stream; the laws hold that its score averages 0. */
  readonly guess: (activity: Activity, chance: Stream) => Play;
}

/** What a play without a right answer comes to: what was done, where a group stood. Plain JSON, and nothing of merit. */
export type Told = Readonly<Record<string, unknown>>;

/** A kind with no right answer: there is nothing to agree with, so it has no score, no record play and no guess. */
export interface UnscoredKind<
  Block,
  Activity extends ActivityBase,
  Play extends PlayBase,
  Telling extends Told = Told,
> extends KindBase<Block, Activity, Play> {
  readonly isScored: false;
  readonly tell: (activity: Activity, play: Play) => Telling;
  /** A play such as a group might give; the laws are held against it. */
  readonly sample: (activity: Activity, chance: Stream) => Play;
}

/** The contract every kind meets: four files, one entry in the registry. */
export type Kind<Block, Activity extends ActivityBase, Play extends PlayBase> =
  ScoredKind<Block, Activity, Play> | UnscoredKind<Block, Activity, Play>;
