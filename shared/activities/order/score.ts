import { readSteps, scoreOrder, type OrderScore } from '../../ordering/index.ts';
import type { Score } from '../kind.ts';
import type { OrderActivity } from './activity.ts';
import type { OrderPlay } from './play.ts';

export interface LaidScore extends Score {
  readonly working: Omit<OrderScore, 'score' | 'guess'> & { readonly [more: string]: unknown };
}

/**
 * Scores a laying from its pairs: every right order scores 1, laying by chance 0 on average, an order backwards least.
 *
 * Pairs that may change places are never counted. See `scoreOrder`.
 */
export function scoreLaid(activity: OrderActivity, play: OrderPlay): LaidScore {
  const { precedence } = readSteps(activity.steps);
  if (precedence === null) throw new Error(`the steps of ${activity.id} wait for each other`);
  const { score, guess, ...working } = scoreOrder(precedence, play.laid);
  return { score, guess, working };
}
