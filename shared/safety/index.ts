export { computeAdults, standsAt, stationRule, type Adults, type Because } from './adults.ts';
export { hazardsOf, inOrder, kitOf, signsOf } from './arising.ts';
export {
  edgeAtStation,
  edgeOfPiece,
  edgeOfType,
  handlingTable,
  mayMeet,
  nearestAllowed,
  nearestAt,
  properStation,
  sharper,
} from './edges.ts';
export { lessonSituation } from './lesson-situation.ts';
export { refusalsOf, REFUSAL_IDS, type Refusal } from './refuse.ts';
export { safetyReport, strictestReport, type SafetyReport } from './report.ts';
export { riskCsv, riskDraft, type Cell, type DraftRow, type RiskDraft } from './risk-assessment.ts';
export {
  CONTROL_LEVELS,
  REFUSAL_OUTCOMES,
  type Control,
  type ControlLevel,
  type Hazard,
  type KitList,
  type Known,
  type RatioRule,
  type SafetyNumber,
  type SafetyRules,
  type Sign,
  type StationRule,
} from './rules.ts';
export { plainSituation, type PieceMet, type Situation, type StationUse } from './situation.ts';
export {
  EDGE_CLASSES,
  EXPOSURES,
  FLAGS,
  PARTS_BEYOND,
  SETTINGS,
  STATION_KINDS,
  USUAL_EXPOSURE,
  type EdgeClass,
  type Exposure,
  type Flag,
  type PartBeyond,
  type Setting,
  type StationKind,
} from './vocabulary.ts';
