export { type AxeMaking, makeAxe } from './axe.ts';
export {
  type Experiment,
  type Place,
  type PlacedExperiment,
  placeExperiments,
  placeOn,
  standFor,
} from './experiments.ts';
export {
  type AxeKind,
  type Choice,
  CHOICES,
  COEFFICIENT_IDS,
  type CoefficientId,
  type Extent,
  type Figure,
  type Finish,
  type Form,
  type Grinder,
  type Limits,
  type MakingFigures,
  type Measure,
  MEASURES,
  type Preform,
  type Skill,
  SPREAD_IDS,
  type SpreadId,
  type Stone,
  type Tables,
  type Wood,
} from './figures.ts';
export { hoursReport, type HoursQuestion, type HoursReport, type ReportedFigure } from './hours-report.ts';
export {
  isQuantityId,
  QUANTITIES,
  type Quantity,
  type QuantityId,
  quantityIds,
  reckonQuantity,
} from './quantities.ts';
export type { ReckonedUnit, Reckoning } from './reckoning.ts';
export type { MakingRequest, Refusal, Result } from './request.ts';
export { type Head, resolveHead, resolveTree, type Tree } from './resolve.ts';
export { type Standing, STANDINGS, weakest } from './standing.ts';
export {
  type StripSegment,
  type Stretch,
  workingLifeStrip,
  type WorkingLifeStrip,
} from './working-life-strip.ts';
