import type { Field, Unit } from './fields.ts';

/** An answer that leaves the whole row out. */
export const LEAVE_ROW_OUT = 'leave-row-out';

/** What the lead has said of a list; kept beside its text, so that reading again gives the same finds. */
export interface Answers {
  /** What a column holds, by its index from 0; null: not used. */
  readonly columns: Readonly<Record<number, Field | null>>;
  readonly units: Readonly<Record<number, Unit>>;
  /** By `row:field`: the value of one find, in the product's own words and units; '' leaves it out. */
  readonly cells: Readonly<Record<string, string>>;
  /** By `field=what was written`: the same for all equal cells. */
  readonly equal: Readonly<Record<string, string>>;
  /** Which pit a context belongs to. */
  readonly pits: Readonly<Record<number, string>>;
  /**
   * Where the finds go into a site that is there: by `row:place` or by the place as written (`P12/1199`, or `1199` alone), where it lies
   * (`P2/1201`, with ` new` where that is to be made); by `row:number`, `replace` or another number.
   */
  readonly into: Readonly<Record<string, string>>;
}

export const NO_ANSWERS: Answers = { columns: {}, units: {}, cells: {}, equal: {}, pits: {}, into: {} };

interface Asked {
  readonly row: number;
  readonly field: Field;
  readonly received: string;
}

export const cellKey = ({ row, field }: Pick<Asked, 'row' | 'field'>): string => `${row}:${field}`;
export const equalKey = ({ field, received }: Pick<Asked, 'field' | 'received'>): string =>
  `${field}=${received.trim().toLowerCase()}`;

/**
 * Adds an answer: for one find, or for every cell of that field that holds the same.
 *
 * @example answer(NO_ANSWERS, { row: 5, field: 'age', received: 'Neo?' }, 'late-neolithic', 'equal').equal // { 'age=neo?': 'late-neolithic' }
 */
export const answer = (answers: Answers, asked: Asked, value: string, reach: 'cell' | 'equal'): Answers =>
  reach === 'cell'
    ? { ...answers, cells: { ...answers.cells, [cellKey(asked)]: value } }
    : { ...answers, equal: { ...answers.equal, [equalKey(asked)]: value } };

/** Says what a column holds; null: it is not used. */
export const giveColumn = (answers: Answers, column: number, field: Field | null): Answers => ({
  ...answers,
  columns: { ...answers.columns, [column]: field },
});

export const giveUnit = (answers: Answers, column: number, unit: Unit): Answers => ({
  ...answers,
  units: { ...answers.units, [column]: unit },
});

export const givePit = (answers: Answers, context: number, pit: string): Answers => ({
  ...answers,
  pits: { ...answers.pits, [context]: pit },
});

/**
 * Answers what was asked of a row that goes into a site: for that row, or for every row that says the same place.
 *
 * @example answerInto(NO_ANSWERS, { row: 5, field: 'context', received: 'P12/1199' }, 'P2/1201', 'equal').into // { 'P12/1199': 'P2/1201' }
 */
export const answerInto = (
  answers: Answers,
  { row, field, received }: { readonly row: number; readonly field: string; readonly received: string },
  value: string,
  reach: 'cell' | 'equal',
): Answers => {
  const key = field === 'small-find' ? `${row}:number` : reach === 'cell' ? `${row}:place` : received;
  return { ...answers, into: { ...answers.into, [key]: value } };
};
