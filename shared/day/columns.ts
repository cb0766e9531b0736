import { isThere, type Day } from './day.ts';
import type { Programme } from './programme.ts';
import type { DayRule } from './rules.ts';

/** The names of the columns; null where the rules leave no such choice. */
export interface Columns {
  readonly visit: (group: number, station: number, slot: number) => string | null;
  readonly lunch: (group: number, slot: number) => string | null;
}

export type Keeps = (rule: DayRule) => boolean;

/** What the rules leave of visits and lunches. */
export function columnsOf(day: Day, keeps: Keeps, into: Programme): Columns {
  const isHere = (group: number, slot: number): boolean => {
    const bells = day.slots[slot];
    const who = day.groups[group];
    return (
      !keeps({ kind: 'present', group }) || (bells !== undefined && who !== undefined && isThere(who, bells))
    );
  };
  const mayVisit = (group: number, station: number, slot: number): boolean => {
    const at = day.stations[station];
    const who = day.groups[group];
    if (at === undefined || who === undefined || !isHere(group, slot)) return false;
    if (keeps({ kind: 'shut', station }) && at.shutSlots.includes(slot)) return false;
    if (keeps({ kind: 'pupils-at-once', station }) && who.pupils > at.pupilsAtOnce) return false;
    return !keeps({ kind: 'ages', station }) || who.youngestYears >= at.fromYears;
  };
  const mayEat = (group: number, slot: number): boolean =>
    keeps({ kind: 'lunch', group }) && (day.lunch?.slots.includes(slot) ?? false) && isHere(group, slot);
  const made = <Key extends readonly number[]>(prefix: string, may: (...key: Key) => boolean) => {
    return (...key: Key): string | null => (may(...key) ? into.yesNo([prefix, ...key].join('_')) : null);
  };
  return { visit: made('x', mayVisit), lunch: made('l', mayEat) };
}
