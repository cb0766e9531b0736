/**
 * A number as a reader can use it: two digits where it was worked out, since the figures bear no more.
 *
 * Grouped by hand: a formatter made anew for each number is slow where many are told at once.
 * @example tellNumber(26.34) // '26'
 * @example tellNumber(1234) // '1,200'
 */
export function tellNumber(value: number, digits = 2): string {
  const [whole = '', part] = String(Number(value.toPrecision(digits))).split('.');
  const grouped = whole.replaceAll(/\B(?=(?:\d{3})+$)/g, ',');
  return part === undefined ? grouped : `${grouped}.${part}`;
}
