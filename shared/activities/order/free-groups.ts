import { freePairs, type FreePair, type Precedence } from '../../ordering/index.ts';
import type { FreeGroup } from './activity.ts';

const holds = ({ pair }: FreePair, step: string): boolean => pair.includes(step);

/** Partners of a step that are free for the same reason, told together. */
function groupsOf(step: string, pairs: readonly FreePair[]): readonly FreeGroup[] {
  const byReason = new Map<string, FreeGroup>();
  for (const { pair, bothAfter, bothBefore } of pairs) {
    const other = pair[0] === step ? pair[1] : pair[0];
    const reason = JSON.stringify([bothAfter, bothBefore]);
    const others = [...(byReason.get(reason)?.others ?? []), other];
    byReason.set(reason, { step, others, bothAfter, bothBefore });
  }
  return [...byReason.values()];
}

/**
 * Every pair of steps that may change places, in few sentences: the step with most partners first, each pair once.
 *
 * @example freeGroups(precedence)[0] // { step: 'cut-haft-wood', others: ['find-nodule', 'rough-out'], bothAfter: [], bothBefore: ['cut-socket'] }
 */
export function freeGroups(precedence: Precedence): readonly FreeGroup[] {
  let left = freePairs(precedence);
  const groups: FreeGroup[] = [];
  while (left.length > 0) {
    const count = (step: string): number => left.filter((pair) => holds(pair, step)).length;
    const busiest = precedence.ids.reduce((best, step) => (count(step) > count(best) ? step : best));
    groups.push(
      ...groupsOf(
        busiest,
        left.filter((pair) => holds(pair, busiest)),
      ),
    );
    left = left.filter((pair) => !holds(pair, busiest));
  }
  return groups;
}
