import type { Vocabulary } from './library.ts';

/** Shorter words ("in", "not") stand in the names of things and are nobody's trade. */
const SHORTEST = 4;

const kept = new WeakMap<Vocabulary, ReadonlySet<string>>();

/** The words finds are named by, small letters: a lesson teaches them, so they do not count against its reading. */
export function tradeWords(vocabulary: Vocabulary): ReadonlySet<string> {
  const before = kept.get(vocabulary);
  if (before !== undefined) return before;
  const { attributes, objectTypes } = vocabulary;
  const labels = [...attributes.flatMap(({ values }) => values), ...objectTypes].map(({ label }) => label);
  const words = labels.flatMap((label) => label.toLowerCase().split(/[^\p{L}-]+/u));
  const trade = new Set(words.filter((word) => word.length >= SHORTEST));
  kept.set(vocabulary, trade);
  return trade;
}
