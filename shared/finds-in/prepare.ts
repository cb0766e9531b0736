import { ROLES, type Attribute, type Vocabulary } from '../library/library.ts';
import type { Field } from './fields.ts';
import { makeHeaderWords, type HeaderWords } from './header-words.ts';
import { makeLookUp, type Looked } from './look-up.ts';
import { plain } from './plain.ts';
import type { FindsInWords, UsualType } from './read-words.ts';

/** What reading any list needs of the vocabulary and the words, made once and handed in again with each answer. */
export interface Prepared {
  readonly vocabulary: Vocabulary;
  readonly lookUps: Readonly<Record<WordField, (written: string) => Looked>>;
  /** Look-ups that take no slips, to tell quickly what a whole column is like. */
  readonly plainLookUps: Readonly<Partial<Record<Field, (written: string) => Looked>>>;
  /** States within running text, where a word like another is another word. */
  readonly stateInText: (written: string) => Looked;
  readonly usual: (type: string) => UsualType | null;
  readonly label: (field: Field, id: string) => string;
  readonly isNotRecorded: (text: string) => boolean;
  readonly people: readonly string[];
  readonly headerWords: HeaderWords;
  readonly totals: ReadonlySet<string>;
}

/** Fields whose values are words of the vocabulary. */
export type WordField = Attribute | 'role' | 'side';

/** Makes the look-ups of a vocabulary and a table of other people's words. */
export function prepareFindsIn(vocabulary: Vocabulary, words: FindsInWords): Prepared {
  const terms = (id: Attribute): readonly { readonly id: string; readonly label: string }[] =>
    vocabulary.attributes.find((attribute) => attribute.id === id)?.values ?? [];
  const bare = (ids: readonly string[]): readonly { readonly id: string; readonly label: string }[] =>
    ids.map((id) => ({ id, label: id }));
  const types = new Map(words.types.map((usual) => [usual.type, usual]));
  const notRecorded = new Set(words['not-recorded'].map((mark) => mark.toLowerCase()));
  const labels = new Map<string, string>(
    vocabulary.attributes.flatMap(({ id, values }) =>
      values.map((term) => [`${id}=${term.id}`, term.label] as const),
    ),
  );
  const stateInText = makeLookUp(words.states, terms('state'), false);
  return {
    vocabulary,
    lookUps: {
      'object-type': makeLookUp(words['object-types'], vocabulary.objectTypes),
      material: makeLookUp(words.materials, terms('material')),
      age: makeLookUp(words.ages, terms('age')),
      state: makeLookUp(words.states, terms('state')),
      'made-by': makeLookUp([], terms('made-by')),
      'used-for': makeLookUp([], terms('used-for')),
      role: makeLookUp([], bare(ROLES)),
      side: makeLookUp([], bare(['left', 'right'])),
    },
    plainLookUps: {
      'object-type': makeLookUp(words['object-types'], vocabulary.objectTypes, false),
      material: makeLookUp(words.materials, terms('material'), false),
      age: makeLookUp(words.ages, terms('age'), false),
      state: stateInText,
    },
    stateInText,
    usual: (type) => types.get(type) ?? null,
    label: (field, id) => labels.get(`${field}=${id}`) ?? id,
    isNotRecorded: (text) => notRecorded.has(text.trim().toLowerCase()),
    people: words.people.map(plain),
    headerWords: makeHeaderWords(words),
    totals: new Set(words.totals.map(plain)),
  };
}
