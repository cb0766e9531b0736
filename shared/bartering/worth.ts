import type { Gathering } from './gathering.ts';
import { isSpoiled, whenSettled, type Position, type Step } from './position.ts';

const upTo = (totals: readonly number[] | undefined, count: number): number =>
  totals?.[Math.min(Math.max(count, 0), totals.length - 1)] ?? 0;

/** What a trader would gain by so many more of a good (fewer: below zero), debts counted as settled. */
function change(gathering: Gathering, position: Position, trader: number, good: number, by: number): number {
  if (isSpoiled(gathering, position, good)) return 0;
  const totals = gathering.worthUpTo[trader]?.[good];
  const count = whenSettled(gathering, position, trader, good);
  return upTo(totals, count + by) - upTo(totals, count);
}

/** What the last of so many more of a good is worth to a trader now. */
export const worthOfLast = (
  gathering: Gathering,
  position: Position,
  trader: number,
  good: number,
  more: number,
): number =>
  change(gathering, position, trader, good, more) - change(gathering, position, trader, good, more - 1);

/** What several goods add to a trader's worth, each after those before it. */
export const worthGained = (
  gathering: Gathering,
  position: Position,
  trader: number,
  goods: readonly number[],
): number => total(gathering, position, trader, goods, 1);

/** What a trader loses in handing over several goods, as a number from 0 up. */
export const worthLost = (
  gathering: Gathering,
  position: Position,
  trader: number,
  goods: readonly number[],
): number => 0 - total(gathering, position, trader, goods, -1);

function total(
  gathering: Gathering,
  position: Position,
  trader: number,
  goods: readonly number[],
  sign: 1 | -1,
): number {
  let sum = 0;
  for (const [index, good] of goods.entries()) {
    if (goods.indexOf(good) !== index) continue;
    let count = 0;
    for (const other of goods) if (other === good) count += 1;
    sum += change(gathering, position, trader, good, sign * count);
  }
  return sum;
}

/** What passes in the end when a step is made: the goods of the step, and what a gift leaves owed. */
export interface Passing {
  /** From the pupil to the trader. */
  readonly given: readonly number[];
  /** From the trader to the pupil. */
  readonly taken: readonly number[];
}

/** What a step passes with debts counted: a gift brings its return, a return brings nothing new. */
export function passingOf(gathering: Gathering, step: Step): Passing {
  const isReturn = step.give.length === 0;
  const isGift = step.take.length === 0;
  if (isReturn) return { given: [], taken: [] };
  return { given: step.give, taken: isGift ? [gathering.returns[step.with] ?? -1] : step.take };
}

/** By how much each side is better off for a step: whole numbers, both above 0 for a swap or a gift, both 0 for a return. */
export function gainsOf(
  gathering: Gathering,
  position: Position,
  step: Step,
): { readonly pupil: number; readonly them: number } {
  const { given, taken } = passingOf(gathering, step);
  return {
    pupil: worthGained(gathering, position, 0, taken) - worthLost(gathering, position, 0, given),
    them:
      worthGained(gathering, position, step.with, given) - worthLost(gathering, position, step.with, taken),
  };
}
