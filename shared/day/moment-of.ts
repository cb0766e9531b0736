import type { Day } from './day.ts';

/** What a minute of the day is: a slot, the time before, between or after slots. */
export interface Moment {
  readonly kind: 'before' | 'slot' | 'between' | 'after';
  /** The slot that runs; null outside of one. */
  readonly slot: number | null;
  /** The slot that comes next; null in the last and after it. */
  readonly next: number | null;
  /** Minutes to the next bell, begun ones counted whole; null when the day is over. */
  readonly minutesLeft: number | null;
}

/**
 * What runs at a minute of the day, and what comes next. At the minute of a bell the slot it rings in has begun, and the
 * one it rings out is over.
 *
 * @example momentOf({ slots: [{ fromMinute: 600, toMinute: 620 }] }, 605) // { kind: 'slot', slot: 0, next: null, minutesLeft: 15 }
 */
export function momentOf({ slots }: Pick<Day, 'slots'>, minute: number): Moment {
  const slot = slots.findIndex(({ fromMinute, toMinute }) => fromMinute <= minute && minute < toMinute);
  const coming = slots.findIndex(({ fromMinute }) => fromMinute > minute);
  const next = coming < 0 ? null : coming;
  if (slot >= 0) {
    return { kind: 'slot', slot, next, minutesLeft: (slots[slot]?.toMinute ?? minute) - minute };
  }
  if (next === null) return { kind: 'after', slot: null, next, minutesLeft: null };
  const minutesLeft = (slots[next]?.fromMinute ?? minute) - minute;
  return { kind: next === 0 ? 'before' : 'between', slot: null, next, minutesLeft };
}
