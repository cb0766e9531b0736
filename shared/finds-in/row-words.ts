import { findsInWords as words } from '../words/en/finds-in.ts';
import { LENGTHS } from './fields.ts';
import { isFormula, readNumber } from './read-number.ts';
import { answered, ask, type OpenRow, type Reading, type WordField } from './reading.ts';
import type { Proposal } from './question.ts';
import type { UsualType } from './read-words.ts';

/** More than this a lead does not choose from at a glance; the whole vocabulary is a press away. ASM. */
const MOST_PROPOSALS = 6;
/** What is proposed where no state is known. */
const STATES = ['whole', 'broken', 'burnt', 'worn'] as const;

const proposalsOf = (reading: Reading, field: WordField, ids: readonly string[]): readonly Proposal[] =>
  [...new Set(ids)].slice(0, MOST_PROPOSALS).map((value) => ({ value, label: reading.label(field, value) }));

/**
 * The lead's answer, in any word that a list may say it in; what it could mean besides is asked again.
 *
 * @param likely What is proposed where nothing is known by that word.
 */
function fromLead(
  reading: Reading,
  open: OpenRow,
  field: WordField,
  likely: () => readonly string[],
): string | null | undefined {
  const given = answered(reading, open, field);
  if (given === undefined) return undefined;
  const { sure, ids } = reading.lookUps[field](given);
  const [first] = ids;
  if (sure === 'yes' && first !== undefined) return first;
  ask(open, field, {
    reason: first === undefined ? 'word-unknown' : 'word-open',
    asked: first === undefined ? words.unfitAnswer(field, given) : words.wordOpen(field, given),
    proposals: proposalsOf(reading, field, first === undefined ? likely() : ids),
    taken: null,
  });
  return null;
}

/** A written word as a value of the vocabulary; null where nothing stands till the lead answers; undefined where none is written. */
function fromCell(
  reading: Reading,
  open: OpenRow,
  field: WordField,
  likely: readonly string[],
  object: string,
): string | null | undefined {
  const written = open.textOf(field);
  if (written === '') return undefined;
  const isShared = true;
  const offered = proposalsOf(reading, field, likely);
  if (isFormula(written)) {
    ask(open, field, {
      reason: 'formula',
      asked: words.formula(field, written),
      proposals: offered,
      taken: likely[0] ?? null,
      isShared,
    });
    return likely[0] ?? null;
  }
  const { sure, ids } = reading.lookUps[field](written);
  const [first] = ids;
  if (sure === 'yes' && first !== undefined) return first;
  if (reading.isNotRecorded(written)) {
    const taken = field === 'object-type' ? null : (likely[0] ?? null);
    ask(open, field, {
      reason: 'not-recorded',
      asked: words.notRecorded(field, written),
      proposals: offered,
      taken,
    });
    return taken;
  }
  if (first === undefined) {
    // What only adds to the object has a usual value; the object itself has none.
    const taken =
      field === 'made-by' || field === 'used-for' || field === 'role' ? (likely[0] ?? null) : null;
    ask(open, field, {
      reason: 'word-unknown',
      asked: words.wordUnknown(field, written),
      proposals: offered,
      taken,
      isShared,
    });
    return taken;
  }
  const fitting = ids.filter((id) => likely.includes(id));
  const [only] = fitting;
  if (sure === 'ask' && ids.length > 1 && only !== undefined && fitting.length === 1) {
    open.guessed.set(field, words.oneOfMeanings(written, object));
    return only;
  }
  const proposals = proposalsOf(reading, field, [...fitting, ...ids]);
  if (sure === 'no') {
    ask(open, field, {
      reason: 'word-open',
      asked: words.wordOpen(field, written),
      proposals,
      taken: null,
      isShared,
    });
    return null;
  }
  const taken = only ?? first;
  ask(open, field, {
    reason: 'word-taken',
    asked: words.wordTaken(field, written, reading.label(field, taken)),
    proposals,
    taken,
    isShared,
  });
  return taken;
}

/** Object types that can be made of a material, for a row whose object is unknown; the nearest in size first. */
function typesOf(reading: Reading, open: OpenRow, material: string | undefined): readonly string[] {
  const sizes = LENGTHS.map((field) => {
    const read = readNumber(open.textOf(field), false);
    return read.kind === 'number' && read.value > 0 ? read.value : null;
  });
  const distance = (type: string): number => {
    const usual = reading.usual(type)?.['size-mm'] ?? [1, 1, 1];
    const parts = sizes.map((size, index) =>
      size === null ? 0 : Math.abs(Math.log(size / (usual[index] ?? 1))),
    );
    return parts.reduce((sum, part) => sum + part, 0);
  };
  return reading.vocabulary.objectTypes
    .map(({ id }) => id)
    .filter((id) => material === undefined || (reading.usual(id)?.materials ?? []).includes(material))
    .map((id) => ({ id, away: distance(id) }))
    .toSorted((a, b) => a.away - b.away)
    .map(({ id }) => id);
}

/** The object of a row, or null where the lead must say. */
export function readObject(reading: Reading, open: OpenRow): string | null {
  const material = reading.lookUps.material(open.textOf('material')).ids[0];
  const given = fromLead(reading, open, 'object-type', () => typesOf(reading, open, material));
  if (given !== undefined) return given;
  const written = open.textOf('object-type');
  const isKnown = written !== '' && reading.lookUps['object-type'](written).ids.length > 0;
  const likely = isKnown ? [] : typesOf(reading, open, material);
  const read = fromCell(reading, open, 'object-type', likely, '');
  if (read !== undefined) return read;
  const proposals = proposalsOf(reading, 'object-type', likely);
  ask(open, 'object-type', {
    reason: 'word-unknown',
    asked: words.wordMissing('object-type'),
    proposals,
    taken: null,
  });
  return null;
}

/** The words of a row beside its object, with what is usual for the object where none is written. */
export interface RowWords {
  readonly material: string;
  readonly age: string;
  readonly state: string;
  readonly madeBy: string;
  readonly usedFor: string;
  readonly role: string;
}

/** Material and age: as written, or as usual for the object; asked where the two do not go together. */
function readFitting(
  reading: Reading,
  open: OpenRow,
  field: 'material' | 'age',
  object: string,
  likely: readonly string[],
): string | null {
  const label = reading.label('object-type', object);
  const given = fromLead(reading, open, field, () => likely);
  if (given !== undefined) return given;
  const before = open.questions.length;
  const read = fromCell(reading, open, field, likely, label);
  if (read === undefined) {
    const [usual] = likely;
    if (usual !== undefined) {
      open.guessed.set(field, words.byType(label));
      return usual;
    }
    ask(open, field, { reason: 'word-unknown', asked: words.wordMissing(field), proposals: [], taken: null });
    return null;
  }
  if (read === null || likely.length === 0 || likely.includes(read)) return read;
  // One question a cell: that the two do not go together is the weightier.
  open.questions.length = before;
  const kept = { value: read, label: words.asWritten(reading.label(field, read)) };
  ask(open, field, {
    reason: 'contradiction',
    asked: words.contradiction(field, reading.label(field, read), label),
    proposals: [...proposalsOf(reading, field, likely), kept],
    taken: null,
  });
  return null;
}

/** The state: a column's, else what the note or the object's name says, else what is usual. */
function readState(reading: Reading, open: OpenRow, object: string, usual: UsualType | null): string | null {
  const label = reading.label('object-type', object);
  const given = fromLead(reading, open, 'state', () => STATES);
  if (given !== undefined) return given;
  const read = fromCell(reading, open, 'state', usual === null ? [] : [usual.state], label);
  if (read !== undefined) return read;
  for (const [text, why] of [
    [open.textOf('note'), words.fromNote],
    [open.textOf('object-type'), words.fromObject],
  ] as const) {
    const said = /\b(?:not|no|never|non|nicht|pas|niet)\b/i.test(text)
      ? undefined
      : reading.stateInText(text).ids[0];
    if (said !== undefined) {
      open.guessed.set('state', why(text));
      return said;
    }
  }
  if (usual !== null) {
    open.guessed.set('state', words.byType(label));
    return usual.state;
  }
  ask(open, 'state', {
    reason: 'word-unknown',
    asked: words.wordMissing('state'),
    proposals: proposalsOf(reading, 'state', STATES),
    taken: null,
  });
  return null;
}

/** A word that only adds to the object: as written, else by rule. */
function readAdded(
  reading: Reading,
  open: OpenRow,
  field: 'made-by' | 'used-for' | 'role',
  byRule: string | null,
  why: string,
): string | null {
  const given = fromLead(reading, open, field, () => (byRule === null ? [] : [byRule]));
  if (given !== undefined) return given;
  const read = fromCell(reading, open, field, byRule === null ? [] : [byRule], '');
  if (read !== undefined) return read;
  if (byRule !== null) {
    open.guessed.set(field, why);
    return byRule;
  }
  ask(open, field, { reason: 'word-unknown', asked: words.wordMissing(field), proposals: [], taken: null });
  return null;
}

/** What part a find of an age plays: of the pit's own age it is evidence. */
const roleOf = (age: string | null): string =>
  age === 'modern'
    ? 'decoy-modern'
    : age === 'natural'
      ? 'decoy-natural'
      : age === 'earlier'
        ? 'decoy-older'
        : 'evidence';

/** Reads the words of a row whose object is known; null where one of them waits for an answer. */
export function readRowWords(reading: Reading, open: OpenRow, object: string): RowWords | null {
  const usual = reading.usual(object);
  const label = reading.label('object-type', object);
  const material = readFitting(reading, open, 'material', object, usual?.materials ?? []);
  const age = readFitting(reading, open, 'age', object, usual?.ages ?? []);
  const state = readState(reading, open, object, usual);
  const madeBy = readAdded(reading, open, 'made-by', usual?.['made-by'] ?? null, words.byType(label));
  const usedFor = readAdded(reading, open, 'used-for', usual?.['used-for'] ?? null, words.byType(label));
  const role = readAdded(reading, open, 'role', roleOf(age), words.byAge());
  if (
    material === null ||
    age === null ||
    state === null ||
    madeBy === null ||
    usedFor === null ||
    role === null
  )
    return null;
  return { material, age, state, madeBy, usedFor, role };
}

/** The side, where one is written; anything else than left or right is asked and meanwhile left out. */
export function readSide(reading: Reading, open: OpenRow): string | null {
  if (open.textOf('side') === '') return null;
  const given = answered(reading, open, 'side');
  if (given === '') return null;
  const looked = reading.lookUps.side(given ?? open.textOf('side'));
  const [side] = looked.ids;
  if (looked.sure === 'yes' && side !== undefined) return side;
  const proposals = [
    ...proposalsOf(reading, 'side', ['left', 'right']),
    { value: '', label: words.leaveOut() },
  ];
  ask(open, 'side', {
    reason: 'word-unknown',
    asked: words.wordUnknown('side', open.textOf('side')),
    proposals,
    taken: '',
    isShared: true,
  });
  return null;
}
