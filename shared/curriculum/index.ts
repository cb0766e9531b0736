export { coverageOf, type Coverage, type CoveredOutcome, type LessonClaims } from './coverage.ts';
export {
  CLAIM_GRADES,
  foldCode,
  lookUpOutcome,
  type AgeStep,
  type ClaimGrade,
  type Condition,
  type Curricula,
  type Framework,
  type KnownBy,
  type Outcome,
} from './curricula.ts';
export type { ActivityFacts, LessonFacts } from './facts.ts';
export {
  judgeClaim,
  reaches,
  type Claim,
  type ClaimFault,
  type Evidence,
  type JudgedClaim,
} from './judge-claim.ts';
export { listOutcomes, type AgeGroup } from './list-outcomes.ts';
export { numberLimits, type NumberIdea, type NumberLimits } from './number-limits.ts';
export { offerClaims } from './offer-claims.ts';
export { bandsOf } from './steps.ts';
