import { fits, isNumeric, ownUnit, type Field, type Unit } from './fields.ts';
import type { Answers } from './answers.ts';
import type { CutTable } from './cut-table.ts';
import type { HeaderWords, NamedField } from './header-words.ts';
import type { Looked } from './look-up.ts';
import { readNumber } from './read-number.ts';

/** What a column is taken to hold, and why. */
export interface ColumnGuess {
  /** From 0. */
  readonly index: number;
  readonly header: string;
  /** Null: not used; its cells stay in the list and go nowhere. */
  readonly guess: Field | null;
  /** From 0 to 1; 1 where the lead said so. */
  readonly sureness: number;
  readonly why: WhyColumn;
  readonly unit: Unit | null;
  readonly unitFrom: 'lead' | 'header' | 'values' | 'usual' | null;
}

export type WhyColumn =
  | { readonly kind: 'lead' }
  | { readonly kind: 'word' | 'part' | 'slip'; readonly word: string }
  | { readonly kind: 'values'; readonly share: number }
  | { readonly kind: 'taken'; readonly by: string }
  | { readonly kind: 'place' }
  | { readonly kind: 'empty' }
  | { readonly kind: 'unknown' };

/** What the cells of a column are like, from a sample. */
export interface ColumnValues {
  readonly filled: number;
  readonly numeric: number;
  readonly distinct: number;
  readonly known: Readonly<Partial<Record<Field, number>>>;
}

/** Look-ups by field, for the fields whose values are words of the vocabulary. */
export type WordLookUps = Readonly<Partial<Record<Field, (written: string) => Looked>>>;

const SAMPLE = 100;
/** Below this a guess is none: the lead is told the column is not used. ASM. */
const LEAST = 0.3;

function valuesOf(cut: CutTable, index: number, lookUps: WordLookUps, usesComma: boolean): ColumnValues {
  const cells = cut.body
    .slice(0, SAMPLE)
    .map(({ cells: row }) => row[index] ?? '')
    .filter((cell) => cell !== '');
  const share = (holds: (cell: string) => boolean): number =>
    cells.length === 0 ? 0 : cells.filter(holds).length / cells.length;
  const known: Partial<Record<Field, number>> = {};
  for (const [field, lookUp] of Object.entries(lookUps)) {
    known[field as Field] = share((cell) => !/^\d+$/.test(cell) && lookUp(cell).ids.length > 0); // keys are fields
  }
  return {
    filled: cells.length,
    numeric: share((cell) => readNumber(cell.replace(/[()[\]<>]/g, ''), usesComma).kind === 'number'),
    distinct: cells.length === 0 ? 0 : new Set(cells).size / cells.length,
    known,
  };
}

/** How well the cells bear out what the name says, from 0 to 1. */
function borneOut(field: Field, values: ColumnValues): number {
  if (values.filled === 0) return 0.6;
  if (field === 'small-find') return (0.3 + 0.7 * values.numeric) * (0.35 + 0.65 * values.distinct);
  // A column of numbers all different is no count.
  if (field === 'count') return (0.3 + 0.7 * values.numeric) * (1 - 0.5 * values.distinct);
  if (isNumeric(field)) return 0.3 + 0.7 * values.numeric;
  const known = values.known[field];
  if (known !== undefined) return 0.45 + 0.55 * known - 0.4 * values.numeric;
  return field === 'note' ? 1 - 0.3 * values.numeric : 1;
}

const isShared = (field: Field): boolean => field === 'note' || field === 'person';

/** Tells what each column holds: by its name, borne out by its cells; what the lead said first. */
export function guessColumns(
  cut: CutTable,
  headerWords: HeaderWords,
  lookUps: WordLookUps,
  answers: Answers,
  usesComma: boolean,
): readonly ColumnGuess[] {
  const headers = Array.from({ length: cut.columnCount }, (_, index) => cut.header?.cells[index] ?? '');
  const values = headers.map((_, index) => valuesOf(cut, index, lookUps, usesComma));
  const taken = new Map<Field, number>();
  const given = headers.map((_, index) => answers.columns[index]);
  for (const [index, field] of given.entries())
    if (field !== undefined && field !== null && !isShared(field)) taken.set(field, index);

  const offers = headers.flatMap((header, index) => {
    const own = values[index];
    if (own === undefined || given[index] !== undefined) return [];
    const named = headerWords
      .fieldsOf(header)
      .map((offer) => ({ ...offer, index, score: offer.merit * borneOut(offer.field, own) }));
    if (named.some(({ score }) => score >= LEAST)) return named;
    // A name that says nothing: the words below it may.
    return (['object-type', 'material', 'age', 'state'] as const).flatMap((field) => {
      const share = own.known[field] ?? 0;
      const offer: NamedField & { index: number; score: number } = {
        field,
        merit: share,
        by: 'word',
        word: '',
        index,
        score: share * 0.6,
      };
      return share > 0.5 ? [offer] : [];
    });
  });
  const chosen = new Map<number, (typeof offers)[number]>();
  for (const offer of offers.toSorted((a, b) => b.score - a.score || a.index - b.index)) {
    if (offer.score < LEAST || chosen.has(offer.index)) continue;
    if (taken.has(offer.field) && !isShared(offer.field)) continue;
    chosen.set(offer.index, offer);
    taken.set(offer.field, offer.index);
  }
  return headers.map((header, index): ColumnGuess => {
    const lead = given[index];
    const offer = chosen.get(index);
    const guess = lead === undefined ? (offer?.field ?? null) : lead;
    const unit = unitOf(guess, header, answers.units[index], headerWords);
    const base = { index, header, guess, ...unit };
    if (lead !== undefined) return { ...base, sureness: 1, why: { kind: 'lead' } };
    if (offer === undefined)
      return { ...base, sureness: 0, why: whyNone(header, index, offers, headers, taken, values[index]) };
    const sureness = Math.round(offer.score * 100) / 100;
    const share = values[index]?.known[offer.field] ?? 0;
    return {
      ...base,
      sureness,
      why: offer.word === '' ? { kind: 'values', share } : { kind: offer.by, word: offer.word },
    };
  });
}

function unitOf(
  field: Field | null,
  header: string,
  lead: Unit | undefined,
  headerWords: HeaderWords,
): Pick<ColumnGuess, 'unit' | 'unitFrom'> {
  const own = field === null ? null : ownUnit(field);
  if (field === null || own === null) return { unit: null, unitFrom: null };
  if (lead !== undefined && fits(lead, field)) return { unit: lead, unitFrom: 'lead' };
  const written = headerWords.unitOf(header);
  if (written !== null && fits(written, field)) return { unit: written, unitFrom: 'header' };
  return { unit: own, unitFrom: 'usual' };
}

function whyNone(
  header: string,
  index: number,
  offers: readonly { readonly index: number; readonly field: Field; readonly score: number }[],
  headers: readonly string[],
  taken: ReadonlyMap<Field, number>,
  values: ColumnValues | undefined,
): WhyColumn {
  if (header === '' && (values?.filled ?? 0) === 0) return { kind: 'empty' };
  const rival = offers.find((offer) => offer.index === index && offer.score >= LEAST);
  const by = rival === undefined ? undefined : taken.get(rival.field);
  return by === undefined ? { kind: 'unknown' } : { kind: 'taken', by: headers[by] ?? '' };
}
