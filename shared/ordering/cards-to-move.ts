import { comesBefore, type Precedence } from './precedence.ts';

/**
 * The fewest laid cards to take up and lay elsewhere so that no pair is broken (or tied); [] where all is well.
 *
 * Two laid cards are at odds when the one that must come first lies later, or at the same place. That relation is itself a
 * partial order (an order within an order), so the most cards that may stay is its widest antichain, found exactly by
 * matching: Dilworth 1950 (Annals of Mathematics 51: 161-166), Fulkerson 1956 (Proc. AMS 7: 701-702); which cards, by König
 * 1931. What stays can always be completed: a circle through the steps and the line would need a broken pair.
 */
export function cardsToMove(precedence: Precedence, places: readonly (number | null)[]): readonly string[] {
  const steps = [...precedence.ids.keys()];
  const areAtOdds = (later: number, first: number): boolean => {
    const [a, b] = [places[later] ?? null, places[first] ?? null];
    return a !== null && b !== null && b >= a && comesBefore(precedence, first, later);
  };
  const odds = steps.map((later) => steps.filter((first) => areAtOdds(later, first)));
  const matchedTo = new Map<number, number>(); // right step -> left step

  const extend = (left: number, tried: Set<number>): boolean => {
    for (const right of odds[left] ?? []) {
      if (tried.has(right)) continue;
      tried.add(right);
      const holder = matchedTo.get(right);
      if (holder === undefined || extend(holder, tried)) {
        matchedTo.set(right, left);
        return true;
      }
    }
    return false;
  };
  for (const left of steps) extend(left, new Set());

  // König: from the left steps without a match, walk out along any pair and back along matched ones.
  const matchedLeft = new Set(matchedTo.values());
  const reachedLeft = new Set(steps.filter((left) => !matchedLeft.has(left)));
  const reachedRight = new Set<number>();
  for (const left of reachedLeft) {
    for (const right of odds[left] ?? []) {
      reachedRight.add(right);
      const back = matchedTo.get(right);
      if (back !== undefined) reachedLeft.add(back);
    }
  }
  return precedence.ids.filter((_, step) => !reachedLeft.has(step) || reachedRight.has(step));
}
