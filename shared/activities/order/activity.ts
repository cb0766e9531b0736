import type { FindToDraw, StepDrawn } from '../../drawing/index.ts';
import type { ActivityBase } from '../kind.ts';

/** A step of making on its card. */
export interface OrderStep {
  readonly id: string;
  /** What the card is called by: A, B, C in the order dealt, so that it says nothing of its place. */
  readonly letter: string;
  readonly name: string;
  readonly mustFollow: readonly string[];
  readonly why: string | null;
  readonly drawing: StepDrawn | null;
  /** Where in the line it may lie in some right order, counted from 1. */
  readonly earliest: number;
  readonly latest: number;
}

/** Steps that may change places with one step, all for the same reason. Steps by their ids. */
export interface FreeGroup {
  readonly step: string;
  readonly others: readonly string[];
  /** The last steps that all of them wait for. */
  readonly bothAfter: readonly string[];
  /** The first steps that need all of them. */
  readonly bothBefore: readonly string[];
}

export interface OrderActivity extends ActivityBase {
  readonly kind: 'order';
  readonly question: string | null;
  /** In the order in which the cards are dealt. */
  readonly steps: readonly OrderStep[];
  /** The steps in the order the lead wrote them, where that is right; else the right order nearest to it. */
  readonly recorded: readonly string[];
  /** How many orders are right, as digits where it is beyond 2^53; null where there are too many to count. */
  readonly validOrders: number | string | null;
  readonly free: readonly FreeGroup[];
  readonly of: { readonly number: number; readonly name: string; readonly drawing: FindToDraw } | null;
  /** How the order is known. */
  readonly source: string;
}
