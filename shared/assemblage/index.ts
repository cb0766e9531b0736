export { alikeReport, type AlikeReport, type ChanceReport } from './alike-report.ts';
export {
  alikeByChance,
  usualKeeps,
  type AlikeQuestion,
  type Keeps,
  type PairByChance,
} from './alike-by-chance.ts';
export {
  bestGroup,
  sharingGroups,
  type BestGroup,
  type GroupQuestion,
  type SharingGroup,
} from './best-group.ts';
export { beyondGuessing, type AskedItem, type BeyondGuessing } from './beyond-guessing.ts';
export { brainerdRobinson } from './brainerd-robinson.ts';
export { cooccurrence } from './cooccurrence.ts';
export { benjaminiHochberg, holm } from './correct-many.ts';
export {
  countFinds,
  pitsWithKind,
  presence,
  uncommonKinds,
  type CountedFind,
  type Counts,
} from './counts.ts';
export { shannon, simpson, type Shannon, type Simpson } from './diversity.ts';
export { fisherExact, fisherOfPits, type FisherExact } from './fisher-exact.ts';
export { fullSetTail, type ExactChance } from './full-set.ts';
export { companyTail, hypergeometric, type Hypergeometric } from './hypergeometric.ts';
export { kindsInCompany, type Company, type SiteCompany } from './kinds-in-company.ts';
export { LIKENESSES, likenessMatrix, type Likeness } from './likeness.ts';
export type { Measured, NoMeasure } from './measured.ts';
export {
  jaccard,
  kindsOfTwo,
  overlap,
  overlapOfKinds,
  sorensenDice,
  type KindsOfTwo,
  type Overlap,
} from './overlap.ts';
export { isRobinsonForm, robinsonBreaks, type RobinsonBreaks } from './robinson-form.ts';
export {
  judge,
  JUDGEMENTS,
  meanScore,
  scoreJudgement,
  type JudgedItem,
  type Judgement,
  type JudgementScore,
} from './score-judgement.ts';
export { scoreLikeness, type LikenessGuess, type LikenessScore } from './score-likeness.ts';
export {
  KIND_PLACES,
  recordedPlaces,
  scorePlaces,
  type KindPlace,
  type PlacesScore,
  type PlaceWorking,
} from './score-places.ts';
export { seriate, type Seriation } from './seriate.ts';
export { sharedByDeal } from './shared-by-deal.ts';
export { siteByChance } from './site-by-chance.ts';
export { siteView, type SiteView } from './site-view.ts';
export type { ChanceTally } from './tally.ts';
