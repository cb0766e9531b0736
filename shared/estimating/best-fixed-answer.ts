/** A fixed answer and what it averages over some items. */
export interface FixedAnswer<Given> {
  readonly answer: Given;
  readonly averageScore: number;
}

/**
 * The candidate that scores best on average when it is given to every item: what "always the same" would get in a lesson.
 *
 * A lesson in which this is above 0 favours one answer, and says so. Null when there are no candidates or no items can be scored.
 * @example bestFixedAnswer(items, [1, 10, 100], (item, guess) => scoreOf(item, guess))
 */
export function bestFixedAnswer<Item, Given>(
  items: readonly Item[],
  candidates: readonly Given[],
  scoreOf: (item: Item, answer: Given) => number | null,
): FixedAnswer<Given> | null {
  let best: FixedAnswer<Given> | null = null;
  for (const answer of candidates) {
    const scores = items.map((item) => scoreOf(item, answer)).filter((score) => score !== null);
    if (scores.length === 0) continue;
    const averageScore = scores.reduce((sum, score) => sum + score, 0) / scores.length;
    if (best === null || averageScore > best.averageScore) best = { answer, averageScore };
  }
  return best;
}
