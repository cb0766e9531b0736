import { nearest } from '../lesson/nearest.ts';
import type { Meaning } from './read-words.ts';
import { plain } from './plain.ts';

/** What a written word stands for. `ids`: values of the vocabulary, the likeliest first. */
export interface Looked {
  readonly sure: 'yes' | 'ask' | 'no';
  readonly ids: readonly string[];
}

interface Named {
  readonly id: string;
  readonly label: string;
}

const NONE: Looked = { sure: 'no', ids: [] };
/** "Neo?", "poss. scraper": what the lead was not sure of is asked. */
const DOUBT =
  /\?|\b(?:poss(?:ibly|ible)?|prob(?:ably|able)?|cf|vermutlich|wohl|peut-etre|waarschijnlijk|posible)\b\.?/gi;
/** Words shorter than this are not taken for a slip of another: "ln" is not "lm". ASM. */
const SHORTEST_SLIP = 5;

const singular = (word: string): string => word.replace(/(?<=\w{3})s(?=-|$)/g, '');

/**
 * Makes a look-up of what lists write: the vocabulary's own words are sure, the words of other lists as they say,
 * a slip of the pen and a word within a longer description are asked. Each written text is worked out once.
 *
 * @param takesSlips False for running text, where a word like another is another word.
 * @example makeLookUp([], [{ id: 'flint', label: 'flint' }])('Flint?') // { sure: 'ask', ids: ['flint'] }
 */
export function makeLookUp(
  meanings: readonly Meaning[],
  terms: readonly Named[],
  takesSlips = true,
): (written: string) => Looked {
  const table = new Map<string, Looked>();
  for (const { means, sure, words } of meanings) {
    const ids = means.filter((id) => terms.some((term) => term.id === id));
    if (ids.length === 0) continue;
    for (const word of words) {
      const key = singular(plain(word));
      if (!table.has(key)) table.set(key, { sure, ids });
    }
  }
  for (const { id, label } of terms) {
    table.set(singular(plain(label)), { sure: 'yes', ids: [id] });
    table.set(singular(plain(id)), { sure: 'yes', ids: [id] });
  }
  const keys = [...table.keys()].toSorted(
    (a, b) => b.split('-').length - a.split('-').length || b.length - a.length,
  );
  const parted = keys.map((key) => ({ key, parts: key.split('-') }));
  const long = keys.filter((key) => key.length >= SHORTEST_SLIP);

  const within = (tokens: readonly string[]): Looked | null => {
    const held = parted.find(({ parts }) => parts.every((part) => tokens.includes(part)))?.key;
    return held === undefined ? null : (table.get(held) ?? null);
  };
  const work = (written: string): Looked => {
    const clean = singular(plain(written.replace(DOUBT, ' ')));
    if (clean === '') return NONE;
    const doubted = clean !== singular(plain(written)) || written.includes('?');
    const asked = (looked: Looked): Looked => (looked.sure === 'yes' ? { ...looked, sure: 'ask' } : looked);
    const exact = table.get(clean);
    if (exact !== undefined) return doubted ? asked(exact) : exact;
    const slip = !takesSlips || clean.length < SHORTEST_SLIP - 1 ? null : nearest(clean, long);
    if (slip !== null) return asked(table.get(slip) ?? NONE);
    return asked(within(clean.split('-')) ?? NONE);
  };
  const known = new Map<string, Looked>();
  return (written) => {
    const before = known.get(written);
    if (before !== undefined) return before;
    const looked = work(written);
    known.set(written, looked);
    return looked;
  };
}
