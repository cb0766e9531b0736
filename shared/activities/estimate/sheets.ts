import type { Bin, Line } from '../../estimating/index.ts';
import type { ReckonedUnit } from '../../making/index.ts';
import type { EstimateActivity } from './activity.ts';

interface Base {
  readonly title: string;
  readonly question: string;
  readonly unit: ReckonedUnit;
}

/** For a pupil: the line to mark, and the strip to fill in. */
export interface EstimateSheet
  extends Base, Pick<EstimateActivity, 'find' | 'given' | 'landmarks' | 'strip'> {
  readonly part: 'estimate-sheet';
  readonly choices: readonly string[];
  /** Null where pupils only choose. */
  readonly line: Line | null;
  readonly isInterval: boolean;
}

/** For the lead: a tally of a class. */
export interface EstimateTally extends Base {
  readonly part: 'estimate-tally';
  readonly choices: readonly string[];
  readonly line: Line | null;
  readonly bins: readonly Bin[];
}

/** The answer with its reasons. */
export interface EstimateAnswer
  extends
    Base,
    Pick<EstimateActivity, 'find' | 'given' | 'record' | 'used' | 'trials' | 'citations' | 'strip'> {
  readonly part: 'estimate-answer';
  readonly choice: string | null;
  readonly line: Line;
}
