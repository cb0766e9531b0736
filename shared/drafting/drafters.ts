import type { KindName } from '../activities/index.ts';
import { draftBarter } from './barter-draft.ts';
import { draftCompare } from './compare-draft.ts';
import type { Drafter } from './draft.ts';
import { draftEstimate } from './estimate-draft.ts';
import { draftOrder } from './order-draft.ts';
import { draftSort } from './sort-draft.ts';

/** How each kind is drafted; a new kind lights up here. */
export const drafters: Readonly<Record<KindName, Drafter>> = {
  barter: draftBarter,
  compare: draftCompare,
  estimate: draftEstimate,
  order: draftOrder,
  sort: draftSort,
};
