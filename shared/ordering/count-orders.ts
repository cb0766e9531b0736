import { choose } from './choose.ts';
import { countDownSets } from './down-sets.ts';
import type { Precedence } from './precedence.ts';
import { partSize, splitSteps, type StepPart } from './split-steps.ts';

/** Every valid order counted, or none where there are too many ways to hold in mind. */
export type OrderCount = { readonly count: bigint } | { readonly count: null; readonly reason: 'very-many' };

function countPart(precedence: Precedence, part: StepPart): bigint | null {
  switch (part.kind) {
    case 'step':
      return 1n;
    case 'knot': {
      const sets = countDownSets(precedence, part.steps);
      return sets === null ? null : ([...(sets.ways.at(-1)?.values() ?? [])][0] ?? 0n);
    }
    case 'series':
    case 'parallel': {
      let total: bigint | null = 1n;
      let laid = 0;
      for (const inner of part.parts) {
        const count = countPart(precedence, inner);
        if (count === null) return null;
        laid += partSize(inner);
        // Strands that have nothing to do with each other may be laid into one another in any way.
        total *= part.kind === 'parallel' ? count * choose(laid, partSize(inner)) : count;
      }
      return total;
    }
    default:
      return part satisfies never;
  }
}

/**
 * How many orders of the steps are valid (linear extensions), exactly; no steps have one.
 *
 * None with 'very-many' where more than a million sets of steps could be done first, or 53 steps and more hang together.
 * @example countOrders(precedence) // { count: 5n } for the four steps of an N
 */
export function countOrders(precedence: Precedence): OrderCount {
  const steps = [...precedence.ids.keys()];
  const count = countPart(precedence, splitSteps(precedence, steps));
  return count === null ? { count, reason: 'very-many' } : { count };
}

/** A count for JSON: a number to 2^53 - 1, its digits as text beyond. @example countForJson(120n) // 120 */
export const countForJson = (count: bigint): number | string =>
  count <= BigInt(Number.MAX_SAFE_INTEGER) ? Number(count) : count.toString();
