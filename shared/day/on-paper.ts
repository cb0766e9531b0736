import type { Day } from './day.ts';
import type { DayPlan, Doing } from './plan.ts';

/** Printed sheets that a station needs for all who come to it in a plan. */
export const sheetsAt = (day: Day, plan: DayPlan, station: number): number =>
  day.groups.reduce((sheets, { pupils }, group) => {
    const visits = (plan.groups[group] ?? []).filter(
      (doing) => doing.kind === 'station' && doing.station === station,
    ).length;
    return sheets + visits * pupils * (day.stations[station]?.sheetsEach ?? 0);
  }, 0);

/** The place where a group is for what it does; null where it stays where it was. */
const placeOf = (day: Day, doing: Doing | undefined): string | null =>
  doing?.kind === 'station'
    ? (day.stations[doing.station]?.place ?? null)
    : doing?.kind === 'lunch'
      ? (day.lunch?.place ?? null)
      : null;

/** Minutes a group walks to what it does in a slot, from where it was last, or from the gate; 0 where it stays. */
export function walkTo(day: Day, plan: DayPlan, group: number, slot: number): number {
  const row = plan.groups[group] ?? [];
  const to = placeOf(day, row[slot]);
  if (to === null) return 0;
  const before = row.slice(0, slot).findLast((doing) => placeOf(day, doing) !== null);
  const from = before === undefined ? day.gate : placeOf(day, before);
  return from === null ? 0 : (day.walkMinutes[day.places.indexOf(from)]?.[day.places.indexOf(to)] ?? 0);
}
