import type { Day } from './day.ts';
import type { DayPlan, Doing } from './plan.ts';

/**
 * A plan made for one form of a day, read against another: groups, stations and adults are found again by their ids.
 * What is no longer there leaves a slot free.
 */
export function carryPlan(before: Day, plan: DayPlan, day: Day): DayPlan {
  const stationNow = (station: number): number | null => {
    const now = day.stations.findIndex(({ id }) => id === before.stations[station]?.id);
    return now < 0 ? null : now;
  };
  const doingNow = (doing: Doing | undefined): Doing => {
    if (doing?.kind !== 'station') return doing ?? { kind: 'free' };
    const station = stationNow(doing.station);
    return station === null ? { kind: 'free' } : { kind: 'station', station };
  };
  return {
    groups: day.groups.map(({ id }) => {
      const row = plan.groups[before.groups.findIndex((group) => group.id === id)];
      return day.slots.map((_, slot) => doingNow(row?.[slot]));
    }),
    crew: day.adults.map(({ id }) => {
      const row = plan.crew[before.adults.findIndex((adult) => adult.id === id)];
      return day.slots.map((_, slot) => {
        const station = row?.[slot] ?? null;
        return station === null ? null : stationNow(station);
      });
    }),
  };
}
