/**
 * The chance that two particular pits share at least `atLeast` kinds, when each kind is dealt to pits at random.
 *
 * A kind in k of n pits lies in both with chance k(k-1)/n(n-1), each kind on its own: the sum is built kind by kind.
 * Pits do not keep how many kinds they hold, so a rich pair looks less like chance than it is.
 * @throws RangeError with fewer than two pits, or a kind in more pits than there are.
 * @example sharedByDeal(4, [2, 2], 2) // 1 / 36
 */
export function sharedByDeal(pits: number, withEachKind: readonly number[], atLeast: number): number {
  if (pits < 2 || withEachKind.some((count) => count < 0 || count > pits)) {
    throw new RangeError(`kinds in ${withEachKind.join(', ')} of ${pits} pits cannot be dealt`);
  }
  let chances = [1];
  for (const count of withEachKind) {
    const inBoth = (count * (count - 1)) / (pits * (pits - 1));
    chances = [...chances, 0].map(
      (chance, shared) => chance * (1 - inBoth) + (chances[shared - 1] ?? 0) * inBoth,
    );
  }
  return Math.min(
    1,
    chances.slice(Math.max(0, atLeast)).reduce((total, chance) => total + chance, 0),
  );
}
