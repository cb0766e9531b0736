import { quoted } from './problems.ts';

interface Sentences {
  readonly expected: string;
  readonly received: string;
  readonly mend: string;
}

const MOST_WORDS_NAMED = 3;

const shorterWords = (hard: readonly string[]): string =>
  hard.length === 0
    ? ''
    : `, and say a shorter word for ${hard.slice(0, MOST_WORDS_NAMED).map(quoted).join(', ')}`;

const does = (readsAlone: boolean): string => (readsAlone ? 'read' : 'hear');

// What no formula can do is said each time: the caution is a count, not a verdict.
const orKeep = (readsAlone: boolean): string =>
  `a count sees no meaning: keep it if children follow it, or write "read-aloud: true" in the head if ${readsAlone ? 'an adult reads it out' : 'it has been tried aloud'}`;

/** What is said of reading that is hard for a band. */
export const readingProblems = {
  longSentence: (
    words: number,
    most: number,
    band: string,
    readsAlone: boolean,
    hard: readonly string[],
    more: number,
  ): Sentences => ({
    expected: `at most ${most} words in a sentence that ages ${band} ${does(readsAlone)}`,
    received: `${words} words${more === 0 ? '' : `; ${more} more sentences are as long`}`,
    mend: `split it in two${shorterWords(hard)}; ${orKeep(readsAlone)}`,
  }),
  highGrade: (
    grade: number,
    most: number,
    words: number,
    band: string,
    readsAlone: boolean,
    hard: readonly string[],
  ): Sentences => ({
    expected: `a Flesch–Kincaid grade of at most ${most} for what ages ${band} ${does(readsAlone)} (our judgement)`,
    received: `grade ${grade.toFixed(1)} over ${words} words, this sentence the hardest`,
    mend: `split the longest sentences, this one first${shorterWords(hard)}; ${orKeep(readsAlone)}`,
  }),
};
