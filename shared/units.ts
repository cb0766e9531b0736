declare const unit: unique symbol;

type Unit<Name extends string> = number & { readonly [unit]: Name };

/** A length of time in hours, from 0 up. Made only by {@link hours}. */
export type Hours = Unit<'hours'>;
/** A length of time in minutes, from 0 up. Made only by {@link minutes}. */
export type Minutes = Unit<'minutes'>;
/** A length in millimetres, from 0 up. Made only by {@link millimetres}. */
export type Millimetres = Unit<'millimetres'>;
/** A mass in grams, from 0 up. Made only by {@link grams}. */
export type Grams = Unit<'grams'>;

function measured<Name extends string>(name: Name, value: number): Unit<Name> {
  if (!Number.isFinite(value) || value < 0) {
    throw new RangeError(`${name} must be a finite number from 0 up, received ${value}`);
  }
  // The brand exists only in the type system: this is its one mint.
  return value as Unit<Name>;
}

/** Hours from a plain number. @throws RangeError below 0 or not finite. @example hours(1.5) // 1.5 */
export const hours = (value: number): Hours => measured('hours', value);
/** Minutes from a plain number. @throws RangeError below 0 or not finite. @example minutes(20) // 20 */
export const minutes = (value: number): Minutes => measured('minutes', value);
/** Millimetres from a plain number. @throws RangeError below 0 or not finite. @example millimetres(118) // 118 */
export const millimetres = (value: number): Millimetres => measured('millimetres', value);
/** Grams from a plain number. @throws RangeError below 0 or not finite. @example grams(246) // 246 */
export const grams = (value: number): Grams => measured('grams', value);

/** Hours as minutes. @example toMinutes(hours(2)) // 120 */
export const toMinutes = (value: Hours): Minutes => minutes(value * 60);
/** Minutes as hours. @example toHours(minutes(90)) // 1.5 */
export const toHours = (value: Minutes): Hours => hours(value / 60);
