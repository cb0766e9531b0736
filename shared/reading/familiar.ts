import { daleChall } from 'dale-chall';
import { spache } from 'spache';

/** A list of words most pupils of its level know, with their plain endings. */
export type Familiar = (word: string) => boolean;

// Endings that leave a word as familiar as it was (Dale and Chall 1948, rules for counting).
const ENDINGS: readonly (readonly [ending: RegExp, stems: readonly string[]])[] = [
  [/['’]s$/, ['']],
  [/ies$/, ['y']],
  [/ied$/, ['y']],
  [/(?:es|ed|er|est)$/, ['', 'e']],
  [/(?:s|d|r)$/, ['']],
  [/ing$/, ['', 'e']],
  [/ly$/, ['']],
];

function knows(list: ReadonlySet<string>): Familiar {
  const known = (word: string): boolean =>
    list.has(word) ||
    ENDINGS.some(([ending, stems]) => {
      if (!ending.test(word)) return false;
      const stem = word.replace(ending, '');
      const single = stem.replace(/(.)\1$/, '$1');
      return stems.some((tail) => list.has(stem + tail)) || list.has(single);
    });
  return (word) => {
    const plain = word.toLowerCase();
    // A numeral is familiar, as both methods count.
    if (/^\p{N}/u.test(plain)) return true;
    return known(plain) || (plain.includes('-') && plain.split('-').every(known));
  };
}

/** Words 80 in 100 fourth-graders know: Chall and Dale 1995, as kept by the package dale-chall. */
export const familiarAtTen: Familiar = knows(new Set(daleChall.map((word) => word.toLowerCase())));

/** Words of primary readers: Spache 1974, as kept by the package spache. */
export const familiarAtSeven: Familiar = knows(new Set(spache.map((word) => word.toLowerCase())));
