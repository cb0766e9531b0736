/** Cards of a size, as many as a sheet of A4 or Letter holds; the first sheet has the title above them. */
export const DRAWN_CARDS = { first: 4, rest: 8 } as const;
/** Cards with words only. */
export const WORD_CARDS = { first: 6, rest: 14 } as const;

/**
 * Cards sheet by sheet, so that a back can stand behind each.
 *
 * @example cardPages([1, 2, 3, 4, 5], { first: 2, rest: 4 }) // [[1, 2], [3, 4, 5]]
 */
export function cardPages<Card>(
  cards: readonly Card[],
  { first, rest }: { readonly first: number; readonly rest: number },
): readonly (readonly Card[])[] {
  const pages: (readonly Card[])[] = [];
  for (let from = 0; from < cards.length; from += from === 0 ? first : rest) {
    pages.push(cards.slice(from, from + (from === 0 ? first : rest)));
  }
  return pages;
}
