// What a page's islands need of the kinds, without their schemas: a page carries no more than it uses.
export { scoreCompare, type CompareScore } from './compare/score.ts';
export type { CompareActivity, ComparePair } from './compare/activity.ts';
export type { ComparePlay } from './compare/play.ts';
export { scoreLaid, type LaidScore } from './order/score.ts';
export type { FreeGroup, OrderActivity, OrderStep } from './order/activity.ts';
export { tellHandling, type HandleTold } from './handle/tell.ts';
export type { HandleActivity, HandlePiece, PieceIs, Sense } from './handle/activity.ts';
export type { HandlePlay } from './handle/play.ts';
export { tellTalk, type HandsFor, type TalkTold } from './talk/tell.ts';
export type { TalkActivity, TalkChoice, Voice } from './talk/activity.ts';
export type { TalkPlay } from './talk/play.ts';
export { scoreSort, type FindFeedback, type SortScore } from './sort/score.ts';
export type { SortActivity, SortFind, SortTray } from './sort/activity.ts';
export type { SortPlay } from './sort/play.ts';
export { scoreGathering } from './barter/score.ts';
export { scoreClassPlay } from './barter/score-class-play.ts';
export { dealFor } from './barter/class-deal.ts';
export type { BarterActivity, ClassActivity, ClassDeal, GatheringActivity } from './barter/activity.ts';
export type { BarterPlay } from './barter/play.ts';
export {
  classBins,
  recordChoice,
  scoreEstimate,
  type EstimateScore,
  type EstimateWorking,
} from './estimate/score.ts';
export { cellAt, type LeverCell } from './estimate/lever-cell.ts';
export {
  ASKS,
  type Ask,
  type EstimateActivity,
  type EstimateTrial,
  type Lever,
} from './estimate/activity.ts';
export type { EstimatePlay } from './estimate/play.ts';
