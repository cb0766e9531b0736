import type { Answer } from './answer.ts';
import type { Line } from './line.ts';

/** One bin of a dot plot or a show of hands: from its start up to, not including, its end. */
export interface Bin {
  readonly from: number;
  readonly to: number;
}

/**
 * Bins of equal ratio feel, cut at …1, 2, 5, 10, 20, 50…, that cover a line with ends above 0.
 *
 * @example binsFor({ from: 5, to: 50 }) // 5–10, 10–20, 20–50
 */
export function binsFor({ from, to }: Line): Bin[] {
  if (!(from > 0 && from < to && Number.isFinite(to))) {
    throw new RangeError(`a line must rise from above 0, received ${from} to ${to}`);
  }
  const edges = [from];
  for (let power = Math.floor(Math.log10(from)); 10 ** power < to; power += 1) {
    for (const digit of [1, 2, 5]) {
      // A power below 0 is written as a quotient: 2 / 10 is 0.2, 2 * 10 ** -1 may not be.
      const edge = power < 0 ? digit / 10 ** -power : digit * 10 ** power;
      if (edge > from * (1 + 1e-9) && edge < to * (1 - 1e-9)) edges.push(edge);
    }
  }
  return edges.map((edge, index) => ({ from: edge, to: edges[index + 1] ?? to }));
}

/** How many values fall into each bin, and how many before the first or after the last; the line's very end counts as in. */
export function countInBins(
  values: readonly number[],
  bins: readonly Bin[],
): { readonly counts: readonly number[]; readonly outside: number } {
  const counts = bins.map(() => 0);
  let outside = 0;
  for (const value of values) {
    const place = bins.findIndex(
      (bin, index) =>
        value >= bin.from && (value < bin.to || (index === bins.length - 1 && value === bin.to)),
    );
    if (place < 0) outside += 1;
    else counts[place] = (counts[place] ?? 0) + 1;
  }
  return { counts, outside };
}

/**
 * The bin that holds the middle of a show of hands; two when the middle falls on the edge between them. No finer figure
 * is given: hands in bins do not hold one.
 *
 * @example middleBins([3, 10, 4]) // { value: [1] }
 */
export function middleBins(counts: readonly number[]): Answer<readonly number[], 'no-values'> {
  const total = counts.reduce((sum, count) => sum + count, 0);
  if (total === 0) return { value: null, why: 'no-values' };
  const placeOf = (rank: number): number => {
    let soFar = 0;
    return counts.findIndex((count) => {
      soFar += count;
      return soFar >= rank;
    });
  };
  const lower = placeOf(Math.ceil(total / 2));
  const upper = placeOf(Math.floor(total / 2) + 1);
  return { value: lower === upper ? [lower] : [lower, upper] };
}
