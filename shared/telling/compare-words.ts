import type { ChanceTally, Keeps } from '../assemblage/index.ts';
import type { compare } from '../words/en/compare.ts';
import { say, type Template } from '../words/index.ts';

/** The words of a comparison, resolved for a band. */
export type CompareWords = Readonly<Record<keyof typeof compare, Template>>;

/** A pit's number, as it is read out. @example pitNumber('P3') // '3' */
export const pitNumber = (pit: string | undefined): string => (pit ?? '').replace(/^P/, '');

/** A place of a kind, in words. */
export function placeName(
  { pits }: { readonly pits: readonly { readonly cut: { readonly id: string } }[] },
  words: CompareWords,
  place: 'both' | 'only-first' | 'only-second' | 'neither',
): string {
  const [first, second] = pits.map(({ cut }) => pitNumber(cut.id));
  return say(words[place], { first: first ?? '', second: second ?? '' });
}

/** A chance as a percentage. @example percentOf(0.0125) // '1.3' */
export const percentOf = (share: number): string => {
  const percent = 100 * share;
  return percent >= 10 ? percent.toFixed(0) : percent.toFixed(1);
};

/** Two decimals, with a true minus. */
export const twoPlaces = (value: number): string => value.toFixed(2).replace('-', '−');

/** A likeness on its scale: whole numbers of 200, two decimals of 1. */
export const likenessText = (value: number, most: number): string =>
  most === 1 ? twoPlaces(value) : String(Math.round(value));

/** How often chance does as much: exact, by shuffles, or rarer than they can show. */
export function chanceLine(words: CompareWords, tally: ChanceTally): string {
  const { draws, isExact, atLeast, chance } = tally;
  if (isExact) return say(words.exactChance, { percent: percentOf(chance), draws });
  // No shuffle did: all that can be said is "fewer than one".
  return atLeast === 0
    ? say(words.byChanceRare, { draws })
    : say(words.byChance, { percent: percentOf(chance), draws });
}

/** Reasons to doubt that likeness was meant: the lead's, then those of the method. */
export function doubtLines(
  words: CompareWords,
  written: readonly string[],
  keeps: Keeps | null,
): readonly string[] {
  const ours =
    keeps === null
      ? [words.doubtFew]
      : [words.doubtNotMeant, keeps === 'finds' ? words.doubtPieces : words.doubtCommon, words.doubtFew];
  return [...written, ...ours.map((doubt) => say(doubt))];
}
