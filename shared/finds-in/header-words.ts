import { nearest } from '../lesson/nearest.ts';
import { TABLE_COLUMNS } from '../library/read-finds-table.ts';
import { FIELDS, isUnit, type Field, type Unit } from './fields.ts';
import { plain } from './plain.ts';
import type { FindsInWords } from './read-words.ts';

/** What a column's name says it holds: `merit` from 0 to 1, and the known word it was taken for. */
export interface NamedField {
  readonly field: Field;
  readonly merit: number;
  readonly by: 'word' | 'part' | 'slip';
  readonly word: string;
}

export interface HeaderWords {
  readonly fieldsOf: (header: string) => readonly NamedField[];
  readonly unitOf: (header: string) => Unit | null;
  /** True for a cell that by itself names a column. */
  readonly names: (cell: string) => boolean;
}

const tokensOf = (header: string): string[] => plain(header).split('-').filter(Boolean);

/** The unit a header ends in or has in brackets: "L (mm)", "Wt_g". */
function unitOf(header: string): Unit | null {
  const bracketed = /[([{]\s*(?:in\s+)?([a-z]+)\.?\s*[)\]}]/i.exec(header)?.[1]?.toLowerCase();
  if (bracketed !== undefined && isUnit(bracketed)) return bracketed;
  const tokens = tokensOf(header);
  const last = tokens.at(-1);
  return tokens.length > 1 && last !== undefined && isUnit(last) ? last : null;
}

/** Names without their unit: "Wt (g)" is "wt". */
function bare(header: string): string {
  const tokens = tokensOf(header);
  const without =
    unitOf(header) === null ? tokens : tokens.filter((token, index) => index === 0 || !isUnit(token));
  return without.join('-');
}

/** Makes what tells the fields a column's name may stand for, in any of the languages listed and in the product's own words. */
export function makeHeaderWords(words: FindsInWords): HeaderWords {
  const table = new Map<string, Field[]>();
  const add = (word: string, field: Field): void => {
    const key = plain(word);
    const fields = table.get(key) ?? [];
    if (!fields.includes(field)) table.set(key, [...fields, field]);
  };
  for (const column of TABLE_COLUMNS) {
    const field = FIELDS.find((known) => known === plain(column));
    if (field !== undefined) add(column, field);
  }
  for (const { field, words: written } of words.columns) for (const word of written) add(word, field);
  const keys = [...table.keys()];
  const parted = keys.filter((key) => key.length > 1).map((key) => ({ key, parts: key.split('-') }));
  const long = keys.filter((key) => key.length > 4);

  const fieldsOf = (header: string, takesSlips = true): readonly NamedField[] => {
    const found: NamedField[] = [];
    const put = (key: string, by: NamedField['by'], merit: number): void => {
      for (const field of table.get(key) ?? []) {
        if (!found.some((known) => known.field === field))
          found.push({ field, merit, by, word: key.replaceAll('-', ' ') });
      }
    };
    const whole = plain(header);
    const short = bare(header);
    put(whole, 'word', 1);
    put(short, 'word', 1);
    if (found.length > 0 || short === '') return found;
    const tokens = short.split('-');
    const held = parted
      .filter(({ parts }) => parts.every((part) => tokens.includes(part)))
      .toSorted((a, b) => b.key.length - a.key.length);
    for (const { key } of held) put(key, 'part', 0.7);
    if (takesSlips && found.length === 0 && short.length > 4) {
      const slip = nearest(short, long);
      if (slip !== null) put(slip, 'slip', 0.7);
    }
    return found;
  };
  return {
    fieldsOf,
    unitOf,
    names: (cell) => cell.length < 40 && fieldsOf(cell, false).some(({ merit }) => merit > 0.6),
  };
}
