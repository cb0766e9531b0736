/** How much of something is left at each hand-over down the line. */
export interface FallOff {
  readonly handovers: number;
  /** keep ^ handovers, from 0 to 1. */
  readonly share: number;
  /** Its natural logarithm: a straight line against handovers; null at a share of 0. */
  readonly logShare: number | null;
}

/**
 * Passing down the line: at each hand-over a share is kept on and the rest stays behind, so what is left falls by the
 * same factor each time. After Renfrew 1977, "Alternative models for exchange and spatial distribution", p. 72
 * (law of monotonic decrement); the closed form is derived here.
 *
 * @param keep the share passed on at each hand-over, 0 to 1.
 * @throws RangeError for a share outside 0 to 1 or hand-overs that are not a whole number from 0.
 * @example fallOff(0.5, 2).map(({ share }) => share) // [1, 0.5, 0.25]
 */
export function fallOff(keep: number, handovers: number): FallOff[] {
  if (!(keep >= 0 && keep <= 1))
    throw new RangeError(`the share passed on must be from 0 to 1, received ${keep}`);
  if (!Number.isInteger(handovers) || handovers < 0)
    throw new RangeError(`hand-overs must be a whole number from 0, received ${handovers}`);
  return Array.from({ length: handovers + 1 }, (_, passed) => {
    const share = keep ** passed;
    return { handovers: passed, share, logShare: share > 0 ? Math.log(share) : null };
  });
}
