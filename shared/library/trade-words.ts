import type { Library } from './library.ts';

/** Shorter words ("in", "not") stand in the names of things and are nobody's trade. */
const SHORTEST = 4;

type Words = Pick<Library, 'vocabulary' | 'glossary'>;

const kept = new WeakMap<Words, ReadonlySet<string>>();

/** The words finds are named by and those of the glossary, small letters: a lesson teaches them, so they do not count against its reading. */
export function tradeWords(library: Words): ReadonlySet<string> {
  const before = kept.get(library);
  if (before !== undefined) return before;
  const { attributes, objectTypes } = library.vocabulary;
  const labels = [...attributes.flatMap(({ values }) => values), ...objectTypes].map(({ label }) => label);
  const told = library.glossary.flatMap(({ word, forms }) => [word, ...forms]);
  const words = [...labels, ...told].flatMap((label) => label.toLowerCase().split(/[^\p{L}-]+/u));
  const trade = new Set(words.filter((word) => word.length >= SHORTEST));
  kept.set(library, trade);
  return trade;
}
