import type { Gathering } from './gathering.ts';
import type { Holding } from './world.ts';

/**
 * Who holds what, what is owed, and how many handovers there have been. One byte each:
 * the counts (trader by trader, good by good), then for each trader what they owe the pupil
 * (0 nothing, 1 + good, SETTLED), then the trader who had a gift at the last handover (0 none), then the handovers.
 */
export type Position = Uint8Array<ArrayBuffer>;

/** Owed once, and given back since. */
const SETTLED = 255;

/** A handover in numbers: `with` a trader, goods given and taken. */
export interface Step {
  readonly with: number;
  readonly give: readonly number[];
  readonly take: readonly number[];
}

/** Where everyone stands when the gathering begins. */
export function startOf(gathering: Gathering): Position {
  const { goodCount, traderCount, goodIds, traders } = gathering;
  // One byte more where that makes the length even: a key is read two bytes at a time.
  const bytes = traderCount * goodCount + traderCount + 2;
  const position = new Uint8Array(bytes + (bytes % 2));
  for (const [trader, { holds }] of traders.entries()) {
    for (const [good, id] of goodIds.entries()) position[trader * goodCount + good] = holds[id] ?? 0;
  }
  return position;
}

/** A text that two positions share only when they are the same. */
export const keyOf = (position: Position): string =>
  Reflect.apply(String.fromCharCode, null, new Uint16Array(position.buffer));

/** How many of a good a trader has in hand. */
export const inHand = (gathering: Gathering, position: Position, trader: number, good: number): number =>
  position[trader * gathering.goodCount + good] ?? 0;

/** The good a trader owes the pupil; -1 for none. */
export function owedBy(gathering: Gathering, position: Position, trader: number): number {
  const mark = position[gathering.traderCount * gathering.goodCount + trader] ?? 0;
  return mark === 0 || mark === SETTLED ? -1 : mark - 1;
}

/** True for a trader who has had a gift from the pupil, given back or not. */
export const hasHadGift = (gathering: Gathering, position: Position, trader: number): boolean =>
  position[gathering.traderCount * gathering.goodCount + trader] !== 0;

const afterDebts = (gathering: Gathering): number => gathering.traderCount * (gathering.goodCount + 1);

/** The trader who had a gift at the last handover; 0 for none. */
export const lastGiftTo = (gathering: Gathering, position: Position): number =>
  position[afterDebts(gathering)] ?? 0;

/** Handovers so far, counted no further than matters for spoiling. */
const handoversOf = (gathering: Gathering, position: Position): number =>
  position[afterDebts(gathering) + 1] ?? 0;

/** True once a good is worth nothing to anyone. */
export const isSpoiled = (gathering: Gathering, position: Position, good: number): boolean =>
  handoversOf(gathering, position) >= (gathering.spoilsAfter[good] ?? Infinity);

/** How many of a good a trader has with debts settled: what is owed counts as passed already. */
export function whenSettled(gathering: Gathering, position: Position, trader: number, good: number): number {
  const count = inHand(gathering, position, trader, good);
  if (trader !== 0) return owedBy(gathering, position, trader) === good ? count - 1 : count;
  let promised = 0;
  for (const other of gathering.returners) {
    if (owedBy(gathering, position, other) === good) promised += 1;
  }
  return count + promised;
}

/** The pupil has the aim in hand. */
export const isHome = (gathering: Gathering, position: Position): boolean =>
  inHand(gathering, position, 0, gathering.aim) > 0;

/** The position after a step that is allowed; the one given is left as it was. */
export function after(gathering: Gathering, position: Position, step: Step): Position {
  const { goodCount, traderCount, lastSpoiling } = gathering;
  const next = position.slice();
  const move = (good: number, from: number, to: number): void => {
    next[from * goodCount + good] = (next[from * goodCount + good] ?? 0) - 1;
    next[to * goodCount + good] = (next[to * goodCount + good] ?? 0) + 1;
  };
  for (const good of step.give) move(good, 0, step.with);
  for (const good of step.take) move(good, step.with, 0);
  const owed = traderCount * goodCount + step.with;
  const isGift = step.take.length === 0;
  if (isGift) next[owed] = (gathering.returns[step.with] ?? -1) + 1;
  else if (step.give.length === 0) next[owed] = SETTLED;
  next[afterDebts(gathering)] = isGift ? step.with : 0;
  next[afterDebts(gathering) + 1] = Math.min(handoversOf(gathering, position) + 1, lastSpoiling);
  return next;
}

/** What one trader has in hand, by id. */
export function holdingOf(gathering: Gathering, position: Position, trader: number): Holding {
  const entries = gathering.goodIds.map(
    (id, good) => [id, inHand(gathering, position, trader, good)] as const,
  );
  return Object.fromEntries(entries.filter(([, count]) => count > 0));
}
