// What a page's islands need of the kinds, without their schemas: a page carries no more than it uses.
export { scoreCompare, type CompareScore } from './compare/score.ts';
export type { CompareActivity, ComparePair } from './compare/activity.ts';
export type { ComparePlay } from './compare/play.ts';
export { scoreLaid, type LaidScore } from './order/score.ts';
export type { FreeGroup, OrderActivity, OrderStep } from './order/activity.ts';
export { scoreSort, type FindFeedback, type SortScore } from './sort/score.ts';
export type { SortActivity, SortFind, SortTray } from './sort/activity.ts';
export type { SortPlay } from './sort/play.ts';
