import { cellKey, equalKey, type Answers } from './answers.ts';
import type { Field } from './fields.ts';
import type { ColumnGuess } from './guess-columns.ts';
import type { Prepared } from './prepare.ts';
import type { Proposal, Question, Reason } from './question.ts';

export type { WordField } from './prepare.ts';

/** All that reading a row needs: what was prepared, and what the lead has answered. */
export interface Reading extends Prepared {
  readonly answers: Answers;
  readonly hasAnswers: boolean;
}

export const makeReading = (prepared: Prepared, answers: Answers): Reading => ({
  ...prepared,
  answers,
  hasAnswers: Object.keys(answers.cells).length + Object.keys(answers.equal).length > 0,
});

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
