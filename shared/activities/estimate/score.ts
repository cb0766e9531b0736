import {
  binsFor,
  crowdOf,
  fromEnds,
  middleBins,
  nearestChoice,
  scoreChoice,
  scoreInterval,
  scoreNumber,
  type Bin,
  type Crowd,
  type Nearness,
  type Range,
} from '../../estimating/index.ts';
import type { Score } from '../kind.ts';
import type { EstimateActivity } from './activity.ts';
import type { EstimatePlay } from './play.ts';

/** The share of cases an interval is asked to miss: "I am 80 in 100 sure" (judgement). */
export const MISSED_SHARE = 0.2;

/** What lies behind a score, by how the answer was given. */
export type EstimateWorking =
  | {
      readonly how: 'choose';
      readonly chosen: string;
      readonly record: string;
      readonly doublingsOff: number;
      readonly doublingsAtStake: number;
    }
  | {
      readonly how: 'number';
      readonly number: number;
      readonly nearness: Nearness;
      /** From the quarters of the record; below them negative. */
      readonly doublingsOff: number;
      readonly doublingsAtMiddle: number;
    }
  | {
      readonly how: 'interval';
      readonly lower: number;
      readonly upper: number;
      readonly cost: number;
      readonly recordCost: number;
      readonly referenceCost: number;
      /** Share of the record's cases that the interval holds. */
      readonly held: number;
    }
  | { readonly how: 'numbers'; readonly crowd: Crowd }
  | {
      readonly how: 'hands';
      readonly record: string;
      readonly hands: number;
      readonly agreeing: number;
    }
  | {
      readonly how: 'bins';
      readonly bins: readonly Bin[];
      readonly counts: readonly number[];
      readonly hands: number;
      /** The stretches that hold the class's middle: one, or two where it falls between. */
      readonly middle: readonly number[];
    }
  | { readonly how: 'nothing'; readonly why: string };

export interface EstimateScore extends Score {
  readonly working: EstimateWorking & { readonly [more: string]: unknown };
}

/** Half of the cases: a number among them is as right as any. */
export const rightRange = ({ record }: EstimateActivity): Range => ({
  low: record.lowerQuarter,
  high: record.upperQuarter,
});

/** The stretches of the line that a class shows hands for. */
export const classBins = ({ line }: Pick<EstimateActivity, 'line'>): readonly Bin[] => binsFor(line);

/** The record's middle in hours, to be set against comparisons. */
const middleHours = ({ record, unit }: Pick<EstimateActivity, 'record' | 'unit'>): number =>
  unit === 'min' ? record.middle / 60 : record.middle;

/** The place of the comparison nearest to the record. */
export const recordChoice = (activity: EstimateActivity): number =>
  nearestChoice(
    activity.choices.map(({ hours }) => hours),
    middleHours(activity),
  );

const said = (score: number | null, working: EstimateWorking): EstimateScore => ({
  score,
  guess: null,
  working: { ...working },
});

const nothing = (why: string): EstimateScore => said(null, { how: 'nothing', why });

const scoreOneChoice = (activity: EstimateActivity, chosen: number) =>
  scoreChoice(
    chosen,
    recordChoice(activity),
    activity.choices.map(({ hours }) => hours),
  );

function scoreChosen(activity: EstimateActivity, id: string): EstimateScore {
  const chosen = activity.choices.findIndex((choice) => choice.id === id);
  const record = activity.choices[activity.choices.length === 0 ? 0 : recordChoice(activity)];
  if (chosen < 0 || record === undefined) return nothing('choice-unknown');
  const scored = scoreOneChoice(activity, chosen);
  if (scored.value === null) return nothing(scored.why);
  const { score, doublingsOff, doublingsAtStake } = scored.value;
  return said(score, { how: 'choose', chosen: id, record: record.id, doublingsOff, doublingsAtStake });
}

/** Every hand scored as one answer, in the order of the comparisons. */
function scoreHands(activity: EstimateActivity, hands: Readonly<Record<string, number>>): EstimateScore {
  if (activity.choices.length === 0) return nothing('choice-unknown');
  const record = activity.choices[recordChoice(activity)]?.id ?? '';
  let all = 0;
  let total = 0;
  for (const [index, { id }] of activity.choices.entries()) {
    const count = hands[id] ?? 0;
    const scored = scoreOneChoice(activity, index);
    if (scored.value === null) return nothing(scored.why);
    all += count;
    total += count * scored.value.score;
  }
  if (all === 0) return nothing('no-values');
  return said(total / all, { how: 'hands', record, hands: all, agreeing: hands[record] ?? 0 });
}

function scoreOneNumber(activity: EstimateActivity, number: number): EstimateScore {
  const scored = scoreNumber(number, rightRange(activity), activity.line);
  if (scored.value === null) return nothing(scored.why);
  const { score, nearness, doublingsOff, doublingsAtMiddle } = scored.value;
  return said(score, { how: 'number', number, nearness, doublingsOff, doublingsAtMiddle });
}

/** The mean of scores that each say something. */
function meanScore(scores: readonly EstimateScore[]): number | null {
  const values = scores.flatMap(({ score }) => score ?? []);
  return values.length === 0 ? null : values.reduce((total, value) => total + value, 0) / values.length;
}

function scoreNumbers(activity: EstimateActivity, numbers: readonly number[]): EstimateScore {
  const crowd = crowdOf(numbers, rightRange(activity), 'halves');
  if (crowd.value === null) return nothing(crowd.why);
  return said(meanScore(numbers.map((number) => scoreOneNumber(activity, number))), {
    how: 'numbers',
    crowd: crowd.value,
  });
}

/** Hands in a stretch of the line count as its middle by ratio: hands do not say more. */
function scoreBins(activity: EstimateActivity, given: readonly number[]): EstimateScore {
  const bins = classBins(activity);
  const counts = bins.map((_, index) => given[index] ?? 0);
  const middle = middleBins(counts);
  if (middle.value === null) return nothing(middle.why);
  const hands = counts.reduce((total, count) => total + count, 0);
  const total = bins.reduce((sum, bin, index) => {
    const count = counts[index] ?? 0;
    return sum + count * (scoreOneNumber(activity, Math.sqrt(bin.from * bin.to)).score ?? 0);
  }, 0);
  return said(total / hands, { how: 'bins', bins, counts, hands, middle: middle.value });
}

function scoreOneInterval(activity: EstimateActivity, lower: number, upper: number): EstimateScore {
  const scored = scoreInterval({ lower, upper }, fromEnds(activity.record), activity.line, MISSED_SHARE);
  if (scored.value === null) return nothing(scored.why);
  const { score, cost, recordCost, referenceCost, held } = scored.value;
  return said(score, { how: 'interval', lower, upper, cost, recordCost, referenceCost, held });
}

/**
 * Scores an estimate on a scale of ratios: 1 is the record, 0 what one gets who knows the line but not the side. The
 * line's middle, the widest interval and always the same choice gain nothing (see `shared/estimating`).
 *
 * A class is the mean of its members. Null with a reason where nothing was said, or it cannot be scored.
 */
export function scoreEstimate(activity: EstimateActivity, play: EstimatePlay): EstimateScore {
  if (play.choice !== undefined) return scoreChosen(activity, play.choice);
  if (play.number !== undefined) return scoreOneNumber(activity, play.number);
  if (play.interval !== undefined)
    return scoreOneInterval(activity, play.interval.lower, play.interval.upper);
  if (play.numbers !== undefined) return scoreNumbers(activity, play.numbers);
  if (play.hands !== undefined) return scoreHands(activity, play.hands);
  if (play.bins !== undefined) return scoreBins(activity, play.bins);
  return nothing('no-values');
}
