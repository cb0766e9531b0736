import type { Proposal } from './question.ts';

/** Why a row cannot go into a site that is there without a word of the lead's. */
export const INTO_REASONS = ['number-there', 'place-not-said', 'place-not-there'] as const;
export type IntoReason = (typeof INTO_REASONS)[number];

/** What the lead is asked of a row that is to go into a site; the find waits until it is answered. */
export interface IntoQuestion {
  readonly row: number;
  readonly field: 'context' | 'small-find';
  readonly header: string;
  readonly reason: IntoReason;
  /** What the row says, as it was read: a place as `P12/1199` or `1199`, or a number. Equal ones may have one answer. */
  readonly received: string;
  readonly asked: string;
  readonly proposals: readonly Proposal[];
  readonly taken: null;
  readonly isBlocking: true;
  /** True where one answer may serve every row that says the same. */
  readonly isShared: boolean;
}
