import { measured, noMeasure, type Measured } from './measured.ts';

/** Shannon's diversity, in nats (natural logarithm), and its evenness, 0 to 1. */
export interface Shannon {
  readonly nats: Measured;
  /** Nats over the natural logarithm of the number of kinds present; none with a single kind. */
  readonly evenness: Measured;
}

/**
 * Shannon's diversity of one pit's counts; a kind with no finds adds nothing.
 *
 * Source: Shannon 1948, Bell System Technical Journal 27: 379-423; evenness: Pielou 1966, J. Theoretical Biology 13: 131-144.
 * @example shannon([5, 5]).evenness // { value: 1 }
 */
export function shannon(counts: readonly number[]): Shannon {
  const present = counts.filter((count) => count > 0);
  const all = present.reduce((total, count) => total + count, 0);
  if (all === 0) return { nats: noMeasure('empty'), evenness: noMeasure('empty') };
  const nats = -present.reduce((total, count) => total + (count / all) * Math.log(count / all), 0);
  const evenness = present.length === 1 ? noMeasure('one-kind') : measured(nats / Math.log(present.length));
  return { nats: measured(present.length === 1 ? 0 : nats), evenness };
}

/** The three numbers that carry Simpson's name. */
export interface Simpson {
  /** The chance that two finds taken without putting back are of one kind: Σ n(n-1) / N(N-1). */
  readonly dominance: Measured;
  /** The chance that they are of two kinds: 1 - dominance. */
  readonly diversity: Measured;
  /** 1 / dominance; none where no kind has two finds. */
  readonly reciprocal: Measured;
}

/** Simpson's three from one pit's counts; none with fewer than two finds. Source: Simpson 1949, Nature 163: 688. */
export function simpson(counts: readonly number[]): Simpson {
  const all = counts.reduce((total, count) => total + count, 0);
  if (all < 2) {
    return {
      dominance: noMeasure('too-few'),
      diversity: noMeasure('too-few'),
      reciprocal: noMeasure('too-few'),
    };
  }
  const dominance = counts.reduce((total, count) => total + count * (count - 1), 0) / (all * (all - 1));
  return {
    dominance: measured(dominance),
    diversity: measured(1 - dominance),
    reciprocal: dominance === 0 ? noMeasure('none-repeated') : measured(1 / dominance),
  };
}
