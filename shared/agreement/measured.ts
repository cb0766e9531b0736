/** A measure, or none with the reason why there is none. */
export type Measured =
  | { readonly value: number }
  | { readonly value: null; readonly reason: 'no-items' | 'one-category' | 'unequal-raters' };

/** A measure that is defined. @example measured(0.5) // { value: 0.5 } */
export const measured = (value: number): Measured => ({ value });

/** No measure, and why. */
export const undefinedBecause = (reason: 'no-items' | 'one-category' | 'unequal-raters'): Measured => ({
  value: null,
  reason,
});
