/** Kendall's tau with its working, or none with the reason. */
export interface KendallTau {
  /** (C - D) / √((pairs - tied in x)(pairs - tied in y)); without ties (C - D) / pairs. From -1 to 1. */
  readonly value: number | null;
  readonly reason: 'all-tied' | 'too-few' | null;
  readonly concordant: number;
  readonly discordant: number;
  readonly tiedInFirst: number;
  readonly tiedInSecond: number;
}

/**
 * Kendall's rank correlation of two lists; tau-b where there are ties (the same as tau-a where there are none).
 *
 * Source: Kendall 1938, Biometrika 30: 81-93; ties: Kendall 1945, Biometrika 33: 239-251.
 * @throws RangeError when the lists differ in length.
 * @example kendallTau([1, 2, 3, 4], [1, 3, 2, 4]).value // 2/3
 */
export function kendallTau(first: readonly number[], second: readonly number[]): KendallTau {
  if (first.length !== second.length) {
    throw new RangeError(`${first.length} and ${second.length} values cannot be paired`);
  }
  const counts = { concordant: 0, discordant: 0, tiedInFirst: 0, tiedInSecond: 0 };
  let pairs = 0;
  for (let one = 0; one < first.length; one += 1) {
    for (let other = 0; other < one; other += 1) {
      const x = Math.sign((first[one] ?? 0) - (first[other] ?? 0));
      const y = Math.sign((second[one] ?? 0) - (second[other] ?? 0));
      pairs += 1;
      if (x === 0) counts.tiedInFirst += 1;
      if (y === 0) counts.tiedInSecond += 1;
      if (x * y > 0) counts.concordant += 1;
      else if (x * y < 0) counts.discordant += 1;
    }
  }
  if (pairs === 0) return { value: null, reason: 'too-few', ...counts };
  const scale = Math.sqrt((pairs - counts.tiedInFirst) * (pairs - counts.tiedInSecond));
  if (scale === 0) return { value: null, reason: 'all-tied', ...counts };
  return { value: (counts.concordant - counts.discordant) / scale, reason: null, ...counts };
}
