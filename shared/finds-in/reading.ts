import type { Attribute, Vocabulary } from '../library/library.ts';
import { ROLES } from '../library/library.ts';
import { cellKey, equalKey, type Answers } from './answers.ts';
import type { Field } from './fields.ts';
import type { ColumnGuess } from './guess-columns.ts';
import { makeLookUp, type Looked } from './look-up.ts';
import { plain } from './plain.ts';
import type { Proposal, Question, Reason } from './question.ts';
import type { FindsInWords, UsualType } from './read-words.ts';

/** All that reading a row needs, made once for a list. */
export interface Reading {
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
  readonly answers: Answers;
  readonly hasAnswers: boolean;
}

/** Fields whose values are words of the vocabulary. */
export type WordField = Attribute | 'role' | 'side';

export function makeReading(vocabulary: Vocabulary, words: FindsInWords, answers: Answers): Reading {
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
    answers,
    hasAnswers: Object.keys(answers.cells).length + Object.keys(answers.equal).length > 0,
  };
}

/** One row while it is read: its texts by field, what was asked and what was guessed. */
export interface OpenRow {
  readonly row: number;
  readonly textOf: (field: Field) => string;
  readonly columnOf: (field: Field) => ColumnGuess | null;
  readonly questions: Question[];
  /** Why a field has a value that no cell gave. */
  readonly guessed: Map<Field, string>;
}

/** What the lead has answered for a cell, for this find or for all that hold the same; undefined where nothing. */
export const answered = (reading: Reading, open: OpenRow, field: Field): string | undefined =>
  reading.hasAnswers
    ? (reading.answers.cells[cellKey({ row: open.row, field })] ??
      reading.answers.equal[equalKey({ field, received: open.textOf(field) })])
    : undefined;

/** Puts a question to the row. */
export function ask(
  open: OpenRow,
  field: Field,
  question: {
    readonly reason: Reason;
    readonly asked: string;
    readonly proposals: readonly Proposal[];
    readonly taken: string | null;
    readonly isShared?: boolean;
    readonly received?: string;
  },
): void {
  const column = open.columnOf(field);
  const { reason, asked, taken, isShared = false } = question;
  open.questions.push({
    row: open.row,
    column: column?.index ?? null,
    header: column?.header ?? '',
    field,
    reason,
    received: question.received ?? open.textOf(field),
    asked,
    proposals: question.proposals,
    taken,
    isBlocking: taken === null,
    isShared,
  });
}
