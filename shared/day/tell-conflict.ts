import type { Day } from './day.ts';
import { easeRule, type DayEdit } from './ease-rule.ts';
import type { DayOutcome } from './plan-day.ts';
import { tellCount, tellRule } from './tell-rule.ts';

/** A rule that stands in the way, in words, with what would free it. */
export interface ToldRule {
  readonly rule: string;
  readonly says: string;
  readonly frees: string;
  /** What a press would change in the file; null where a press may not. */
  readonly edits: readonly DayEdit[] | null;
}

/** Why there is no such day, in words. */
export interface ToldConflict {
  readonly reasons: readonly { readonly kind: string; readonly says: string }[];
  readonly rules: readonly ToldRule[];
  /** True where with any one of the rules given up the others can hold; null where no set was found. */
  readonly isLeast: boolean | null;
  readonly leastMissed: number | null;
}

/** What stands in the way of a day, in words. */
export const tellConflict = (
  day: Day,
  { reasons, conflict, leastMissed }: Extract<DayOutcome, { readonly status: 'impossible' }>,
): ToldConflict => ({
  reasons: reasons.map((reason) => ({ kind: reason.kind, says: tellCount(day, reason) })),
  rules: (conflict?.rules ?? []).map((rule) => {
    const { says, edits } = easeRule(day, rule);
    return { rule: rule.kind, says: tellRule(day, rule), frees: says, edits };
  }),
  isLeast: conflict?.isLeast ?? null,
  leastMissed,
});
