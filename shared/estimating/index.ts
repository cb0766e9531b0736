export type { Answer } from './answer.ts';
export { bestFixedAnswer, type FixedAnswer } from './best-fixed-answer.ts';
export { type Bin, binsFor, countInBins, middleBins } from './bins.ts';
export { comparisonsFor, LEAST_RATIO } from './comparisons-for.ts';
export { type Crowd, crowdOf, percentError } from './crowd.ts';
export {
  expectedLogIntervalScore,
  type Interval,
  intervalScore,
  logIntervalScore,
} from './interval-score.ts';
export { type Line, lineFor, middleOf, mirrored, type Side } from './line.ts';
export { fromEnds, type LogNormal, meanOf, quantile } from './log-normal.ts';
export { sumQuantiles } from './log-normal-sum.ts';
export { logDistance, logRatio, NEARNESSES, type Nearness, nearness, type Range } from './log-ratio.ts';
export { mean, median, medianAbsoluteDeviation } from './middle.ts';
export { standardNormalBelow, standardNormalQuantile } from './normal.ts';
export {
  probableError,
  QUARTILE_DEFINITIONS,
  type QuartileDefinition,
  type Quartiles,
  quartiles,
} from './quartiles.ts';
export { rankedProbabilityScore } from './ranked-probability.ts';
export { type ChoiceScore, nearestChoice, scoreChoice } from './score-choice.ts';
export { type IntervalScore, recordInterval, referenceInterval, scoreInterval } from './score-interval.ts';
export { gapOf, type NumberScore, scoreNumber } from './score-number.ts';
