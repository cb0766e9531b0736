import { kindNames, type KindName } from '../activities/index.ts';
import { draftBarter } from './barter-draft.ts';
import { draftCompare } from './compare-draft.ts';
import type { Drafter } from './draft.ts';
import { draftEstimate } from './estimate-draft.ts';
import { draftOrder } from './order-draft.ts';
import { draftSort } from './sort-draft.ts';

/**
 * How each kind is drafted; a new kind lights up here. What has no entry is for the lead to write: which pieces lie on a
 * tray, and what is worth arguing, no list of finds can say.
 */
export const drafters: Readonly<Partial<Record<KindName, Drafter>>> = {
  barter: draftBarter,
  compare: draftCompare,
  estimate: draftEstimate,
  order: draftOrder,
  sort: draftSort,
};

/** The kinds that are drafted. */
export const draftedKinds: readonly KindName[] = kindNames.filter((kind) => drafters[kind] !== undefined);
