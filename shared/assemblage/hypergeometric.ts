/** How many marked things a draw holds, by chance: counts from `least` to `most`, with the chance of each. */
export interface Hypergeometric {
  readonly least: number;
  readonly most: number;
  /** The chance (0 to 1) of each count, from `least` up. */
  readonly chances: readonly number[];
}

/**
 * The counts of marked things among `drawn` taken without putting back from `all`, of which `marked` are marked.
 *
 * Each chance from its neighbour's, from the likeliest count outwards, so that nothing overflows; they sum to 1.
 * @throws RangeError unless all three are whole numbers from 0, and neither marked nor drawn is above all.
 * @example hypergeometric(8, 4, 4).chances.map((chance) => chance * 70) // [1, 16, 36, 16, 1]
 */
export function hypergeometric(all: number, marked: number, drawn: number): Hypergeometric {
  const isCount = [all, marked, drawn].every((count) => Number.isInteger(count) && count >= 0);
  if (!isCount || marked > all || drawn > all)
    throw new RangeError(`cannot draw ${drawn} of ${all}, ${marked} marked`);
  const least = Math.max(0, marked + drawn - all);
  const most = Math.min(marked, drawn);
  const likeliest = Math.min(most, Math.max(least, Math.floor(((marked + 1) * (drawn + 1)) / (all + 2))));
  // How many times as likely the count above is (ratio of two neighbouring terms of the definition).
  const rise = (count: number): number =>
    ((marked - count) * (drawn - count)) / ((count + 1) * (all - marked - drawn + count + 1));
  const weights = Array.from({ length: most - least + 1 }, () => 0);
  weights[likeliest - least] = 1;
  for (let count = likeliest; count < most; count += 1) {
    weights[count + 1 - least] = (weights[count - least] ?? 0) * rise(count);
  }
  for (let count = likeliest - 1; count >= least; count -= 1) {
    weights[count - least] = (weights[count + 1 - least] ?? 0) / rise(count);
  }
  const sum = weights.reduce((total, weight) => total + weight, 0);
  return { least, most, chances: weights.map((weight) => weight / sum) };
}

/**
 * The chance that two kinds, each dealt to pits at random, lie together in at least `together` pits.
 *
 * @example companyTail(12, 6, 5, 5) // 6 / 792
 */
export function companyTail(pits: number, withFirst: number, withSecond: number, together: number): number {
  const { least, chances } = hypergeometric(pits, withFirst, withSecond);
  return Math.min(
    1,
    chances.slice(Math.max(0, together - least)).reduce((total, chance) => total + chance, 0),
  );
}
