import { countForJson, countOrders } from './count-orders.ts';
import type { ReadSteps, Step } from './precedence.ts';

/** What can be said of a list of steps, as plain JSON. */
export interface OrdersReport {
  readonly steps: readonly string[];
  /** How many orders are valid: a number to 2^53 - 1, digits beyond; 0 with a cycle; null where there are very many. */
  readonly validOrders: number | string | null;
  /** Steps that go round in a circle, each before the next; absent where there is none. */
  readonly cycle?: readonly string[];
}

/** Counts the valid orders of some steps, or names the cycle among them. */
export function ordersReport(steps: readonly Step[], read: ReadSteps): OrdersReport {
  const ids = steps.map(({ id }) => id);
  if (read.precedence === null) return { steps: ids, validOrders: 0, cycle: read.cycle };
  const { count } = countOrders(read.precedence);
  return { steps: ids, validOrders: count === null ? null : countForJson(count) };
}
