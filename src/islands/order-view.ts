import type { OrderActivity } from '../../shared/activities/scorers.ts';
import type { order } from '../../shared/words/en/order.ts';
import type { Template } from '../../shared/words/index.ts';

/** The words of an order, resolved for a band. */
export type OrderWords = Readonly<Record<keyof typeof order, Template>>;

export interface OrderProps {
  readonly lesson: string;
  readonly activity: OrderActivity;
  readonly words: OrderWords;
  /** Steps whose drawing stands in the page. */
  readonly drawn: readonly string[];
  /** Older bands see pairs, counts and how the score is worked out. */
  readonly showsWorking: boolean;
}

/** The id of a step's drawing in the page. */
export const stepDrawingId = (activity: string, step: string): string => `step-${activity}-${step}`;
