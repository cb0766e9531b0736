import type { TableRow } from './cut-table.ts';
import { LENGTHS, ownUnit, type Field } from './fields.ts';
import type { ColumnGuess } from './guess-columns.ts';
import { readNumber } from './read-number.ts';

const SAMPLE = 100;
/** Guessed by place alone: little to go by. ASM. */
const SURENESS = 0.35;
const MOSTLY = 0.8;

interface Numbers {
  readonly index: number;
  readonly isWhole: boolean;
  readonly distinct: number;
  readonly middle: number;
  readonly most: number;
}

/** A column of numbers, or null where it is something else. */
function numbersIn(body: readonly TableRow[], index: number, usesComma: boolean): Numbers | null {
  const cells = body
    .slice(0, SAMPLE)
    .flatMap(({ cells: row }) => ((row[index] ?? '') === '' ? [] : [row[index] ?? '']));
  const values = cells.flatMap((cell) => {
    const read = readNumber(cell.replace(/[()[\]<>]/g, ''), usesComma);
    return read.kind === 'number' ? [read.value] : [];
  });
  if (cells.length === 0 || values.length < MOSTLY * cells.length) return null;
  const sorted = values.toSorted((a, b) => a - b);
  return {
    index,
    isWhole: values.every((value) => Number.isInteger(value)),
    distinct: new Set(values).size / values.length,
    middle: sorted[Math.floor(sorted.length / 2)] ?? 0,
    most: sorted.at(-1) ?? 0,
  };
}

/**
 * Where no column names say what the numbers are, their order does, by the habit of the trade: number, context, count,
 * weight, then length, width and thickness. Only for lists whose objects are known; each guess says it is one by place.
 */
export function guessByPlace(
  columns: readonly ColumnGuess[],
  body: readonly TableRow[],
  usesComma: boolean,
): readonly ColumnGuess[] {
  const named = columns.filter(({ why }) => why.kind === 'word').length;
  if (named > 1) return columns;
  const open = columns.flatMap(({ index, guess, why }) =>
    guess === null && why.kind !== 'lead' ? (numbersIn(body, index, usesComma) ?? []) : [],
  );
  const fields = new Map<number, Field>();
  const isFree = (field: Field): boolean => !columns.some(({ guess }) => guess === field);
  const take = (numbers: Numbers | undefined, field: Field): void => {
    if (numbers === undefined || !isFree(field)) return;
    fields.set(numbers.index, field);
    open.splice(open.indexOf(numbers), 1);
  };
  take(
    open.find(({ isWhole, distinct }) => isWhole && distinct > 0.95),
    'small-find',
  );
  take(
    open.find(({ isWhole, most }) => isWhole && most >= 1 && open.length > LENGTHS.length),
    'context',
  );
  take(
    open.find(({ isWhole, middle, most }) => isWhole && middle === 1 && most < 20),
    'count',
  );
  const last = open.slice(-LENGTHS.length);
  const falls = last.every(
    ({ middle }, place) => place === 0 || middle <= (last[place - 1]?.middle ?? Infinity),
  );
  if (last.length === LENGTHS.length && falls) {
    for (const [place, field] of LENGTHS.entries()) take(last[place], field);
    take(open.at(-1), 'mass-g');
  }
  return columns.map((column): ColumnGuess => {
    const field = fields.get(column.index);
    if (field === undefined) return column;
    const unit = ownUnit(field);
    return {
      ...column,
      guess: field,
      sureness: SURENESS,
      why: { kind: 'place' },
      unit,
      unitFrom: unit === null ? null : 'usual',
    };
  });
}
