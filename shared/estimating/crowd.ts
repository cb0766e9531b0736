import type { Answer } from './answer.ts';
import { logDistance, type Range } from './log-ratio.ts';
import { inOrder, mean, medianAbsoluteDeviation, medianInOrder } from './middle.ts';
import { type QuartileDefinition, type Quartiles, quartiles } from './quartiles.ts';

/** What a class said together, set against the record and against its own best guess. */
export interface Crowd {
  readonly count: number;
  /** Answers of zero and below, which are no lengths of time and are left out. */
  readonly setAside: number;
  readonly least: number;
  readonly greatest: number;
  readonly median: number;
  readonly mean: number;
  /** Null with fewer than two answers where the definition leaves the median out. */
  readonly quartiles: Quartiles | null;
  readonly medianAbsoluteDeviation: number;
  /** Doublings from the record's range to the median; 0 inside it. */
  readonly medianDoublingsOff: number;
  readonly bestGuess: number;
  readonly bestDoublingsOff: number;
  /** How many came nearer to the record than the median did. */
  readonly nearerThanMedian: number;
  readonly asNearAsMedian: number;
}

/**
 * Brings a class's numbers together. The crowd's middle is its median, as in Galton 1907 (Nature 75: 450-451): one wild
 * number cannot move it.
 *
 * @example crowdOf([10, 20, 40, 400], { low: 19, high: 35 }, 'halves')
 */
export function crowdOf(
  guesses: readonly number[],
  record: Range,
  definition: QuartileDefinition,
): Answer<Crowd, 'no-values'> {
  const kept = inOrder(guesses.filter((guess) => guess > 0 && Number.isFinite(guess)));
  const middle = medianInOrder(kept);
  const average = mean(kept);
  const deviation = medianAbsoluteDeviation(kept);
  const least = kept[0];
  const greatest = kept.at(-1);
  if (
    middle.value === null ||
    average.value === null ||
    deviation.value === null ||
    least === undefined ||
    greatest === undefined
  ) {
    return { value: null, why: 'no-values' };
  }
  const offOf = (guess: number): number => Math.abs(logDistance(guess, record).value ?? Infinity);
  const medianDoublingsOff = offOf(middle.value);
  const bestGuess = kept.reduce((best, guess) => (offOf(guess) < offOf(best) ? guess : best), least);
  return {
    value: {
      count: kept.length,
      setAside: guesses.length - kept.length,
      least,
      greatest,
      median: middle.value,
      mean: average.value,
      quartiles: quartiles(kept, definition).value,
      medianAbsoluteDeviation: deviation.value,
      medianDoublingsOff,
      bestGuess,
      bestDoublingsOff: offOf(bestGuess),
      nearerThanMedian: kept.filter((guess) => offOf(guess) < medianDoublingsOff).length,
      asNearAsMedian: kept.filter((guess) => offOf(guess) === medianDoublingsOff).length,
    },
  };
}

/** Error of an estimate as a percentage of the truth; above it positive. @example percentError(1207, 1198) // { value: 0.7513 } */
export function percentError(estimate: number, truth: number): Answer<number, 'truth-is-zero'> {
  if (truth === 0) return { value: null, why: 'truth-is-zero' };
  return { value: (100 * (estimate - truth)) / truth };
}
