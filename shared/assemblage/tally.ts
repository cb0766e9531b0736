/** How a value seen compares with values by chance. */
export interface ChanceTally {
  readonly observed: number;
  /** Values by chance that were looked at. */
  readonly draws: number;
  /** Of those, at least as great as the one seen. */
  readonly atLeast: number;
  /** Of those, truly greater. */
  readonly greater: number;
  /** True where every possible table was looked at, so that `chance` is exact. */
  readonly isExact: boolean;
  /** The chance (0 to 1) of a value at least as great: (1 + at least) / (1 + draws), never 0; when exact, at least / draws. */
  readonly chance: number;
  /** The same with ties counted half: right more often on average, but less cautious. */
  readonly midChance: number;
}

/** Values closer than this count as the same: sums of shares differ in their last digits. */
export const TIE = 1e-9;

/**
 * Sums up a tally. Source of (1 + b)/(1 + n): Davison & Hinkley 1997, Bootstrap Methods, section 4.2; ties half: Lancaster 1961,
 * JASA 56: 223-234.
 */
function chanceTally(
  observed: number,
  draws: number,
  atLeast: number,
  greater: number,
  isExact: boolean,
): ChanceTally {
  // An exact list holds the table as dug; draws do not, so it is added to them.
  const added = isExact ? 0 : 1;
  const all = Math.max(1, draws + added);
  return {
    observed,
    draws,
    atLeast,
    greater,
    isExact,
    chance: Math.max(atLeast + added, draws === 0 ? 1 : 0) / all,
    midChance: (greater + (atLeast - greater + added) / 2) / all,
  };
}

/** A tally being kept: give it each value by chance, then sum it up. */
export function keepTally(observed: number): {
  readonly add: (value: number) => void;
  readonly sum: (isExact?: boolean) => ChanceTally;
} {
  let draws = 0;
  let atLeast = 0;
  let greater = 0;
  return {
    add: (value) => {
      draws += 1;
      if (value >= observed - TIE) atLeast += 1;
      if (value > observed + TIE) greater += 1;
    },
    sum: (isExact = false) => chanceTally(observed, draws, atLeast, greater, isExact),
  };
}
