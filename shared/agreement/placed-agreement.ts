/** One item: the share of agreement (0 to 1) that each category would earn, and how often each was chosen for it. */
export interface PlacedItem {
  /** Agreement by category; a category that is missing earns 0. */
  readonly agreement: Readonly<Record<string, number>>;
  /** Choices by category: 1 for one pupil's choice, a count for hands up. */
  readonly chosen: Readonly<Record<string, number>>;
}

export interface PlacedAgreement {
  /** (observed - expected) / (1 - expected); null where nothing was chosen or every choice agrees. */
  readonly score: number | null;
  /** Mean agreement of the choices, 0 to 1. */
  readonly observed: number;
  /** Mean agreement if the same choices were dealt to the items at random, 0 to 1. */
  readonly expected: number;
}

/**
 * Agreement beyond guessing where an item may have several homes, each worth something.
 *
 * With one home an item it is Cohen's kappa; with agreement falling by steps it is weighted kappa; dealing one's own
 * choices at random gives 0 on average, and so does one category for everything. Items with no choice count as
 * items chosen into no category at all.
 * Source: Cohen 1960 and 1968 (as in cohen-kappa.ts, weighted-kappa.ts); the extension to several homes is ours (DER):
 * expected agreement is the mean over all ways of dealing the same choices to the items.
 * @example placedAgreement([{ agreement: { a: 1 }, chosen: { a: 1 } }, { agreement: { b: 1 }, chosen: { b: 1 } }]).score // 1
 */
export function placedAgreement(items: readonly PlacedItem[]): PlacedAgreement {
  const totals: Record<string, number> = {};
  let choices = 0;
  const shares = items.map(({ chosen }) => {
    const all = Object.values(chosen).reduce((total, count) => total + count, 0);
    if (all === 0) return {};
    choices += 1;
    return Object.fromEntries(Object.entries(chosen).map(([category, count]) => [category, count / all]));
  });
  for (const share of shares) {
    for (const [category, part] of Object.entries(share)) totals[category] = (totals[category] ?? 0) + part;
  }
  if (items.length === 0 || choices === 0) return { score: null, observed: 0, expected: 0 };
  const earned = (item: PlacedItem, share: Readonly<Record<string, number>>): number =>
    Object.entries(share).reduce(
      (total, [category, part]) => total + part * (item.agreement[category] ?? 0),
      0,
    );
  let observed = 0;
  let expected = 0;
  for (const [index, item] of items.entries()) {
    observed += earned(item, shares[index] ?? {}) / items.length;
    expected += earned(item, totals) / (items.length * items.length);
  }
  // Shares of thirds and ninths add up to one only nearly.
  const isSettled = 1 - expected < 1e-9;
  return { score: isSettled ? null : (observed - expected) / (1 - expected), observed, expected };
}
