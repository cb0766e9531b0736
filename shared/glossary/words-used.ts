import type { GlossaryWord } from './glossary.ts';

type Shapes = Pick<GlossaryWord, 'word' | 'forms' | 'alone'>;

const escaped = (text: string): string => text.replaceAll(/[.*+?^${}()|[\]\\]/g, String.raw`\$&`);

const kept = new Map<string, RegExp>();

/** Finds any of some shapes as whole words: `flint` in "Flint, then", not in "flinty". */
function shapesOf({ word, forms, alone }: Shapes): RegExp {
  const shapes = [word, ...forms].filter((shape) => !alone.includes(shape));
  const key = shapes.join('\n');
  const before = kept.get(key);
  if (before !== undefined) return before;
  // A row all of whose shapes count only alone is met in no sentence.
  const made = new RegExp(
    `(?<![\\p{L}\\p{N}-])(?:${shapes.length === 0 ? '(?!)' : shapes.map((shape) => escaped(shape).replaceAll(' ', String.raw`\s+`)).join('|')})(?![\\p{L}\\p{N}])`,
    'iu',
  );
  kept.set(key, made);
  return made;
}

/** Where a word first stands among some texts; −1 where it stands in none. */
function firstPlace(shapes: Shapes, texts: readonly string[]): number {
  const pattern = shapesOf(shapes);
  const whole = new Set(shapes.alone.map((shape) => shape.toLowerCase()));
  return texts.findIndex((text) => pattern.test(text) || whole.has(text.trim().toLowerCase()));
}

/**
 * The words of a glossary that some texts really use, in the order in which they are met; met in one text, by the
 * alphabet.
 *
 * @param texts Prose, titles, names: each whole, since a shape may count only where it is a whole name.
 * @example wordsUsed(glossary, ['A pit with flint in it']).map(({ word }) => word) // ['flint', 'pit']
 */
export const wordsUsed = <Word extends Shapes>(
  glossary: readonly Word[],
  texts: readonly string[],
): readonly Word[] =>
  glossary
    .map((word) => ({ word, place: firstPlace(word, texts) }))
    .filter(({ place }) => place >= 0)
    .toSorted((a, b) => a.place - b.place || (a.word.word.toLowerCase() < b.word.word.toLowerCase() ? -1 : 1))
    .map(({ word }) => word);
