/**
 * The find that a picture's file is named after, where just one is: so that pictures called by their finds need not be told again.
 *
 * @example findInName('p3-124 front.JPG', ['P3-12', 'P3-124']) // 'P3-124'
 */
export function findInName(file: string, finds: readonly string[]): string | null {
  const name = file.toLowerCase().replaceAll(/[\s_]+/g, ' ');
  const named = finds.filter((find) => {
    const wanted = find.toLowerCase();
    const at = name.indexOf(wanted);
    const isPartOf = (sign: string | undefined): boolean => sign !== undefined && /[\p{L}\d]/u.test(sign);
    return at >= 0 && !isPartOf(name[at - 1]) && !isPartOf(name[at + wanted.length]);
  });
  return named.length === 1 ? (named[0] ?? null) : null;
}
