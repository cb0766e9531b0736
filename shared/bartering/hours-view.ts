import { replay } from './handover.ts';
import type { Handover, World } from './world.ts';

/** One handover, by the hours of work in what passed. Null where some good has no known hours; `unknown` says which. */
export interface HoursOfHandover {
  readonly handover: Handover;
  readonly givenHours: number | null;
  readonly takenHours: number | null;
  readonly unknown: readonly string[];
}

/** Fair by hours? One view of a chain, and only one: work is not what a thing is worth to someone. */
export interface HoursView {
  readonly handovers: readonly HoursOfHandover[];
  /** Hours taken less hours given, for the pupil and each trader who swapped; null where some are not known. */
  readonly balances: readonly { readonly trader: string; readonly hours: number | null }[];
}

/** A chain seen by hours of work. Handovers that would be refused are left out. */
export function hoursView(world: World, chain: readonly Handover[]): HoursView {
  const hoursOf = new Map(world.goods.map((good) => [good.id, good.hours]));
  const sum = (goods: readonly string[]): number | null =>
    goods.reduce<number | null>((total, good) => {
      const hours = hoursOf.get(good) ?? null;
      return total === null || hours === null ? null : total + hours;
    }, 0);
  const balances = new Map<string, number | null>();
  const add = (trader: string, change: number | null): void => {
    const before = balances.has(trader) ? (balances.get(trader) ?? null) : 0;
    balances.set(trader, before === null || change === null ? null : before + change);
  };
  const made = replay(world, chain).told.filter(({ refusal }) => refusal === null);
  const handovers = made.map(({ handover }): HoursOfHandover => {
    const givenHours = sum(handover.give);
    const takenHours = sum(handover.take);
    const change = givenHours === null || takenHours === null ? null : takenHours - givenHours;
    add(world.pupil.id, change);
    add(handover.with, change === null ? null : 0 - change);
    const unknown = [...new Set([...handover.give, ...handover.take])].filter(
      (good) => (hoursOf.get(good) ?? null) === null,
    );
    return { handover, givenHours, takenHours, unknown };
  });
  return { handovers, balances: [...balances].map(([trader, hours]) => ({ trader, hours })) };
}
