import type { FindToDraw } from '../../drawing/drawing.ts';
import type { Line } from '../../estimating/index.ts';
import type { Band } from '../../library/bands.ts';
import type { Status } from '../../library/status.ts';
import type {
  Choice,
  MakingRequest,
  Measure,
  Place,
  QuantityId,
  ReckonedUnit,
  Standing,
  StripSegment,
} from '../../making/index.ts';
import type { ActivityBase } from '../activity-base.ts';

/** How pupils answer: among comparisons, with one number, or with a least and a most. */
export const ASKS = ['choose', 'number', 'interval'] as const;
export type Ask = (typeof ASKS)[number];

/** What may be changed after the record has been read. */
export const LEVER_IDS = [
  'size',
  'stone',
  'grinder',
  'extent',
  'finish',
  'preform',
  'skill',
  'diameter',
  'wood',
  'axe',
] as const;
export type LeverId = (typeof LEVER_IDS)[number];

/** A stretch of time to choose, in hours. */
export interface EstimateChoice {
  readonly id: string;
  readonly label: string;
  readonly hours: number;
  readonly status: Status;
  readonly source: string;
}

/** What the model says, in the activity's unit (a share in hundredths): half of the cases lie between the quarters, nine in ten between low and high. */
export interface EstimateRecord {
  readonly low: number;
  readonly lowerQuarter: number;
  readonly middle: number;
  readonly upperQuarter: number;
  readonly high: number;
  readonly status: Standing;
  /** What is not in it though a maker would have done it. */
  readonly without: readonly string[];
}

/** A figure the record stands on. */
export interface UsedFigure {
  readonly id: string;
  readonly label: string;
  readonly low: number | null;
  readonly middle: number;
  readonly high: number | null;
  readonly unit: string;
  readonly status: Standing;
  readonly sources: readonly string[];
}

/** A published trial on the same scale. */
export interface EstimateTrial {
  readonly id: string;
  readonly about: string;
  readonly low: number | null;
  readonly value: number | null;
  readonly high: number | null;
  readonly status: Standing;
  readonly sources: readonly string[];
  /** Against the model at the trial's own size and stone; null where too little is told, or the model does not reach. */
  readonly place: Place | null;
  readonly assumed: string | null;
}

/** One thing that may be changed, with the request each option changes. */
export interface Lever {
  readonly id: LeverId;
  readonly options: readonly {
    readonly id: string;
    readonly label: string;
    readonly change: Pick<MakingRequest, Choice | Measure>;
  }[];
  /** The option that the record has. */
  readonly at: number;
}

/** The find that is asked about: size as found, and the sizes reckoned with where they differ. */
export interface EstimateFind {
  readonly id: string;
  readonly smallFind: number;
  readonly pit: string;
  readonly name: string;
  readonly note: string | null;
  readonly drawing: FindToDraw;
}

/** The making of one axe as a strip of time. Hours. */
export interface EstimateStrip {
  readonly segments: readonly StripSegment[];
  readonly hours: number;
  readonly marks: readonly number[];
  readonly grindingPerShaping: number | null;
}

export interface EstimateActivity extends ActivityBase {
  readonly kind: 'estimate';
  readonly question: string;
  readonly of: QuantityId;
  /** The quantity in words. */
  readonly quantity: string;
  /** All amounts of the activity and of plays are in it; a share is told in hundredths. */
  readonly unit: ReckonedUnit;
  readonly find: EstimateFind | null;
  /** Sizes and choices the record was reckoned with. */
  readonly request: MakingRequest;
  /** The same in words, in the order of a label. */
  readonly given: readonly { readonly id: LeverId | 'stakes' | 'nodule'; readonly value: string }[];
  /** The ways it is asked, for the youngest first, with the bands each is for. */
  readonly asks: readonly { readonly how: Ask; readonly bands: readonly Band[] }[];
  /** Rising; [] where nobody chooses. */
  readonly choices: readonly EstimateChoice[];
  /** Where the answer lies, by ratio. */
  readonly line: Line;
  /** Comparisons along the line, to hold a number against; [] where the unit is no time. */
  readonly landmarks: readonly EstimateChoice[];
  readonly record: EstimateRecord;
  readonly used: readonly UsedFigure[];
  readonly trials: readonly EstimateTrial[];
  /** Citations of every source named in `used` and `trials`, by id. */
  readonly citations: Readonly<Record<string, string>>;
  readonly levers: readonly Lever[];
  readonly strip: EstimateStrip | null;
  /**
   * The youngest band has met no decimals, and no number above this: amounts of one or more are told in whole numbers,
   * and a choice is told by its name alone where its hours are more.
   */
  readonly wholeTo?: number;
  /** It is about making or using edged stone, whatever it shows. */
  readonly aboutMaking: true;
}
