/** One person's worth before and after, by their own reckoning. */
export interface BeforeAfter {
  readonly before: number;
  readonly after: number;
}

/** Nobody ends below where they began. True of an empty list. */
export const isIndividuallyRational = (people: readonly BeforeAfter[]): boolean =>
  people.every(({ before, after }) => after >= before);

/** Somebody is better off and nobody worse. False of an empty list. Source: Pareto 1906, Manuale, ch. 6 (from memory). */
export const isParetoImprovement = (people: readonly BeforeAfter[]): boolean =>
  isIndividuallyRational(people) && people.some(({ before, after }) => after > before);
