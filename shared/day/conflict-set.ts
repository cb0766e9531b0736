import type { Day } from './day.ts';
import { dayProgramme } from './day-programme.ts';
import type { InHand } from './in-hand.ts';
import { ruleKey, type DayRule } from './rules.ts';
import type { Solve } from './solver.ts';

/** Rules that cannot all hold. `isLeast`: with any one of them given up, the rest can. */
export interface ConflictSet {
  readonly rules: readonly DayRule[];
  readonly isLeast: boolean;
}

/**
 * The rules that stand against one another, by the deletion filter: give up one; where the rest still cannot hold it was
 * not needed. Whole kinds of rule are tried first, which spares most of the work. Null where the rules can all hold, or
 * the solver stopped before saying. What has happened of a plan in hand is not up for giving up.
 *
 * Source: Chinneck & Dravnieks 1991 (FM).
 */
export function conflictSet(
  day: Day,
  rules: readonly DayRule[],
  solve: Solve,
  inHand?: InHand,
): ConflictSet | null {
  const ask = (some: readonly DayRule[]) =>
    solve(dayProgramme(day, 'any', some, inHand === undefined ? {} : { inHand })).status;
  if (ask(rules) !== 'infeasible') return null;
  let left = rules;
  for (const kind of new Set(rules.map((rule) => rule.kind))) {
    const without = left.filter((rule) => rule.kind !== kind);
    if (without.length < left.length && ask(without) === 'infeasible') left = without;
  }
  let isLeast = true;
  for (const rule of left) {
    const without = left.filter((other) => ruleKey(other) !== ruleKey(rule));
    const status = ask(without);
    if (status === 'infeasible') left = without;
    else if (status === 'stopped') isLeast = false;
  }
  return { rules: left, isLeast };
}
