/** A word with its place in the text. */
export interface Word {
  readonly text: string;
  readonly offset: number;
  /** A capital within a sentence: a name, which no reader has to know. */
  readonly isName: boolean;
}

export interface Sentence {
  readonly text: string;
  readonly offset: number;
  readonly words: readonly Word[];
}

// Letters and digits, with apostrophes, hyphens, and the marks within a number.
const WORD = /[\p{L}\p{N}]+(?:(?:['’-]|(?<=\p{N})[.,](?=\p{N}))[\p{L}\p{N}]+)*/gu;

const STOPS = /[.!?…]+["'”’)]*/gu;

// A stop after one of these does not end a sentence: "c. 3000 BC", "e.g. flint".
const SHORT_FORMS = /(?:^|\s)(?:c|ca|approx|e\.g|i\.e|cf|no|fig|mr|mrs|ms|dr|st|vs)\.$/i;

/**
 * Cuts a text at its full stops, question marks and exclamation marks. What has no stop, such as a heading, is a
 * sentence of its own. Short forms do not end one.
 *
 * @param offset Where the text begins in its file.
 * @example sentencesOf('Look. Why?', 0).length // 2
 */
export function sentencesOf(text: string, offset: number): readonly Sentence[] {
  const cuts = [0];
  for (const match of text.matchAll(STOPS)) {
    const end = match.index + match[0].length;
    // Looked at here and not in the pattern, which would go back over a long row of stops again and again.
    const isEnd = end === text.length || /\s/.test(text.charAt(end));
    if (isEnd && !SHORT_FORMS.test(text.slice(Math.max(0, match.index - 10), match.index + 1)))
      cuts.push(end);
  }
  cuts.push(text.length);
  return cuts.slice(0, -1).flatMap((from, index): readonly Sentence[] => {
    const slice = text.slice(from, cuts[index + 1]);
    const found = [...slice.matchAll(WORD)];
    const first = found[0];
    if (first === undefined) return [];
    const words = found.map(({ 0: word, index: at }, place) => ({
      text: word,
      offset: offset + from + at,
      isName: place > 0 && /^\p{Lu}/u.test(word) && word !== 'I',
    }));
    return [{ text: slice.trim(), offset: offset + from + first.index, words }];
  });
}
