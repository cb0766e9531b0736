import type { Gathering } from './gathering.ts';
import {
  hasHadGift,
  inHand,
  isSpoiled,
  lastGiftTo,
  owedBy,
  whenSettled,
  type Position,
  type Step,
} from './position.ts';
import { gainsOf, passingOf, worthGained, worthLost, worthOfLast } from './worth.ts';

/** Who a refusal speaks of. */
export type Side = 'pupil' | 'them';

/** Why a handover does not happen, as data: words are made of it elsewhere. Goods are named by id. */
export type Refusal =
  | { readonly code: 'trader-unknown'; readonly trader: string }
  | { readonly code: 'good-unknown'; readonly good: string }
  | { readonly code: 'nothing-passes' }
  | { readonly code: 'same-both-ways'; readonly good: string }
  | { readonly code: 'too-many-things'; readonly most: number; readonly offered: number }
  | {
      readonly code: 'does-not-have';
      readonly side: Side;
      readonly good: string;
      readonly has: number;
      readonly needs: number;
    }
  | { readonly code: 'promised'; readonly good: string }
  | { readonly code: 'spoiled'; readonly good: string; readonly afterHandovers: number }
  | { readonly code: 'only-given'; readonly good: string }
  | { readonly code: 'door-shut'; readonly trader: string }
  | { readonly code: 'takes-no-gifts'; readonly trader: string }
  | { readonly code: 'owes-already'; readonly good: string }
  | { readonly code: 'nothing-owed'; readonly trader: string }
  | { readonly code: 'owes-another'; readonly good: string }
  | { readonly code: 'too-soon'; readonly good: string }
  | { readonly code: 'does-not-want'; readonly side: Side; readonly good: string }
  | { readonly code: 'has-enough'; readonly side: Side; readonly good: string; readonly has: number }
  | { readonly code: 'worse-off'; readonly side: Side; readonly gives: number; readonly gets: number }
  | { readonly code: 'no-better-off'; readonly side: Side; readonly gives: number; readonly gets: number };

function count(goods: readonly number[], good: number): number {
  let same = 0;
  for (const other of goods) if (other === good) same += 1;
  return same;
}

function handsLack(gathering: Gathering, position: Position, step: Step): Refusal | null {
  for (const [side, trader, goods] of [
    ['pupil', 0, step.give],
    ['them', step.with, step.take],
  ] as const) {
    for (const good of goods) {
      const id = gathering.goodIds[good] ?? '';
      const has = inHand(gathering, position, trader, good);
      const needs = count(goods, good);
      if (has < needs) return { code: 'does-not-have', side, good: id, has, needs };
      const isSwap = step.give.length > 0;
      if (isSwap && whenSettled(gathering, position, trader, good) < needs && trader !== 0)
        return { code: 'promised', good: id };
    }
  }
  return null;
}

/** Unwanted things: what the taker has no use for, or enough of. */
function unwanted(
  gathering: Gathering,
  position: Position,
  side: Side,
  trader: number,
  goods: readonly number[],
): Refusal | null {
  for (const good of goods) {
    const id = gathering.goodIds[good] ?? '';
    const totals = gathering.worthUpTo[trader]?.[good] ?? [];
    if ((totals[1] ?? 0) === 0) return { code: 'does-not-want', side, good: id };
    if (worthOfLast(gathering, position, trader, good, count(goods, good)) <= 0)
      return { code: 'has-enough', side, good: id, has: whenSettled(gathering, position, trader, good) };
  }
  return null;
}

function notBetterOff(gathering: Gathering, position: Position, step: Step): Refusal | null {
  const { given, taken } = passingOf(gathering, step);
  const gains = gainsOf(gathering, position, step);
  for (const [side, trader, out, into] of [
    ['them', step.with, taken, given],
    ['pupil', 0, given, taken],
  ] as const) {
    if (gains[side] > 0) continue;
    const gives = worthLost(gathering, position, trader, out);
    const gets = worthGained(gathering, position, trader, into);
    return { code: gains[side] < 0 ? 'worse-off' : 'no-better-off', side, gives, gets };
  }
  return null;
}

function returnRefused(gathering: Gathering, position: Position, step: Step): Refusal | null {
  const owed = owedBy(gathering, position, step.with);
  const trader = gathering.traders[step.with]?.id ?? '';
  if (owed < 0) return { code: 'nothing-owed', trader };
  const good = gathering.goodIds[owed] ?? '';
  if (step.take.length !== 1 || step.take[0] !== owed) return { code: 'owes-another', good };
  return lastGiftTo(gathering, position) === step.with ? { code: 'too-soon', good } : null;
}

function giftRefused(gathering: Gathering, position: Position, step: Step): Refusal | null {
  const returned = gathering.returns[step.with] ?? -1;
  const trader = gathering.traders[step.with]?.id ?? '';
  if (returned < 0 || inHand(gathering, position, step.with, returned) === 0)
    return { code: 'takes-no-gifts', trader };
  if (owedBy(gathering, position, step.with) >= 0)
    return { code: 'owes-already', good: gathering.goodIds[returned] ?? '' };
  return step.give.length > 1 ? { code: 'too-many-things', most: 1, offered: step.give.length } : null;
}

function swapRefused(gathering: Gathering, position: Position, step: Step): Refusal | null {
  const offered = Math.max(step.give.length, step.take.length);
  const most = Math.min(step.give.length, step.take.length) > 1 ? 1 : gathering.bundle;
  if (offered > most) return { code: 'too-many-things', most, offered };
  const both = step.give.find((good) => step.take.includes(good));
  if (both !== undefined) return { code: 'same-both-ways', good: gathering.goodIds[both] ?? '' };
  if (gathering.doorShut[step.with] === true && !hasHadGift(gathering, position, step.with)) {
    return { code: 'door-shut', trader: gathering.traders[step.with]?.id ?? '' };
  }
  const kept = [...step.take, ...step.give].find((good) => gathering.onlyGiven[good] === true);
  return kept === undefined ? null : { code: 'only-given', good: gathering.goodIds[kept] ?? '' };
}

/** Why a numbered step may not be made, the nearest reason first; null when it may. */
export function refusalOfStep(gathering: Gathering, position: Position, step: Step): Refusal | null {
  if (step.give.length + step.take.length === 0) return { code: 'nothing-passes' };
  const lack = handsLack(gathering, position, step);
  if (lack !== null) return lack;
  if (step.give.length === 0) return returnRefused(gathering, position, step);
  const shape =
    step.take.length === 0 ? giftRefused(gathering, position, step) : swapRefused(gathering, position, step);
  if (shape !== null) return shape;
  const bad = [...step.give, ...step.take].find((good) => isSpoiled(gathering, position, good));
  if (bad !== undefined) {
    return {
      code: 'spoiled',
      good: gathering.goodIds[bad] ?? '',
      afterHandovers: gathering.spoilsAfter[bad] ?? 0,
    };
  }
  const { given, taken } = passingOf(gathering, step);
  return (
    unwanted(gathering, position, 'them', step.with, given) ??
    unwanted(gathering, position, 'pupil', 0, taken) ??
    notBetterOff(gathering, position, step)
  );
}
