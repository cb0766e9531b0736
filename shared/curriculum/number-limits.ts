import type { Band } from '../library/bands.ts';
import type { AgeStep } from './curricula.ts';

/** Kinds of number that are met at some age, beyond whole numbers. */
const NUMBER_IDEAS = ['halves-quarters', 'fractions', 'decimals', 'percent', 'negative-numbers'] as const;
export type NumberIdea = (typeof NUMBER_IDEAS)[number];

/** What numbers a band may be asked to read, enter or compare. */
export interface NumberLimits {
  /** The greatest whole number. */
  readonly wholeNumbersTo: number;
  readonly ideas: ReadonlySet<NumberIdea>;
}

/**
 * The numbers all pupils of a band have met: of the steps of age in it, the least and what all of them may use. Null
 * where no step is in the band.
 */
export function numberLimits(
  { steps }: { readonly steps: readonly AgeStep[] },
  band: Band,
): NumberLimits | null {
  const own = steps.filter((step) => step.band === band);
  if (own.length === 0) return null;
  return {
    wholeNumbersTo: Math.min(...own.map(({ wholeNumbersTo }) => wholeNumbersTo)),
    ideas: new Set(NUMBER_IDEAS.filter((idea) => own.every(({ mayUse }) => mayUse.includes(idea)))),
  };
}
