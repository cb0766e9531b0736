/** Why a measure of pits does not exist. */
export type NoMeasure = 'empty' | 'both-empty' | 'one-kind' | 'too-few' | 'none-repeated';

/** A measure, or none with the reason why there is none. */
export type Measured = { readonly value: number } | { readonly value: null; readonly reason: NoMeasure };

/** A measure that is defined. @example measured(164) // { value: 164 } */
export const measured = (value: number): Measured => ({ value });

/** No measure, and why. @example noMeasure('empty') // { value: null, reason: 'empty' } */
export const noMeasure = (reason: NoMeasure): Measured => ({ value: null, reason });
