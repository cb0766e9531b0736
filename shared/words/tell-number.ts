/**
 * A number as a reader can use it: two digits where it was worked out, since the figures bear no more.
 *
 * @example tellNumber(26.34) // '26'
 * @example tellNumber(1234) // '1,200'
 */
export const tellNumber = (value: number, digits = 2, language = 'en-GB'): string =>
  Number(value.toPrecision(digits)).toLocaleString(language, { maximumFractionDigits: 4 });
