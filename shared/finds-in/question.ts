import type { Field } from './fields.ts';

/** Why a cell is asked about. */
export const REASONS = [
  'beyond-limits',
  'beyond-usual',
  'contradiction',
  'count-unclear',
  'cut-not-fill',
  'formula',
  'loose-quote',
  'mass-doubtful',
  'not-a-number',
  'not-recorded',
  'nothing-measured',
  'number-repeated',
  'number-unclear',
  'other-unit',
  'person-named',
  'range',
  'rough',
  'row-refitted',
  'separator-unclear',
  'word-open',
  'word-taken',
  'word-unknown',
] as const;
export type Reason = (typeof REASONS)[number];

export interface Proposal {
  /** In the product's own words and units; '' leaves the cell out. */
  readonly value: string;
  readonly label: string;
}

/** What the lead is asked about one cell. */
export interface Question {
  readonly row: number;
  /** From 0; null where no column holds it. */
  readonly column: number | null;
  readonly header: string;
  readonly field: Field;
  readonly reason: Reason;
  readonly received: string;
  readonly asked: string;
  readonly proposals: readonly Proposal[];
  /** What stands until it is answered; null where nothing can. */
  readonly taken: string | null;
  /** True where the find waits for the answer. */
  readonly isBlocking: boolean;
  /** True where one answer may serve every cell that holds the same. */
  readonly isShared: boolean;
}
