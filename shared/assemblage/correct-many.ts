/**
 * Chances corrected for looking many times, in the order given: below 5 % for any of them is a false alarm in at most 5 % of
 * looks taken together.
 *
 * Source: Holm 1979, Scandinavian Journal of Statistics 6: 65-70 (step down).
 * @example holm([0.01, 0.04, 0.03]) // [0.03, 0.06, 0.06]
 */
export function holm(chances: readonly number[]): readonly number[] {
  const result = chances.map(() => 1);
  let floor = 0;
  for (const [rank, place] of byChance(chances).entries()) {
    floor = Math.max(floor, Math.min(1, (chances[place] ?? 1) * (chances.length - rank)));
    result[place] = floor;
  }
  return result;
}

/**
 * Chances corrected so that of those called below 5 % about one in twenty at most is a false alarm.
 *
 * Source: Benjamini & Hochberg 1995, Journal of the Royal Statistical Society B 57: 289-300 (step up).
 * @example benjaminiHochberg([0.01, 0.04, 0.03]) // [0.03, 0.04, 0.04]
 */
export function benjaminiHochberg(chances: readonly number[]): readonly number[] {
  const result = chances.map(() => 1);
  let ceiling = 1;
  for (const [fromLast, place] of byChance(chances).toReversed().entries()) {
    ceiling = Math.min(ceiling, ((chances[place] ?? 1) * chances.length) / (chances.length - fromLast));
    result[place] = ceiling;
  }
  return result;
}

/** The places of the chances, least first. */
const byChance = (chances: readonly number[]): readonly number[] =>
  [...chances.keys()].toSorted((a, b) => (chances[a] ?? 0) - (chances[b] ?? 0));
