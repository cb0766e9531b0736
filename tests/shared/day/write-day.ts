import { stringify } from 'yaml';
import { tellClock, type Day } from '../../../shared/day/index.ts';

const fromOne = (slots: readonly number[]): number[] => slots.map((slot) => slot + 1);

/** A day as a lead would have written it. Ages are the youngest alone. */
export function writeDay(day: Day): string {
  const clock = (minute: number): string => tellClock(Math.min(minute, 1439));
  return stringify({
    title: day.title,
    status: 'invented',
    slots: day.slots.map(({ fromMinute, toMinute }) => ({ from: clock(fromMinute), to: clock(toMinute) })),
    ...(day.lunch === null ? {} : { lunch: { ...day.lunch, slots: fromOne(day.lunch.slots) } }),
    ...(day.gate === null ? {} : { gate: day.gate }),
    walking: day.places.flatMap((from, row) =>
      day.places.flatMap((to, column) =>
        row < column ? [{ from, to, minutes: day.walkMinutes[row]?.[column] ?? 0 }] : [],
      ),
    ),
    ...(day.mayWalkLate ? { 'late-walks': true } : {}),
    groups: Object.fromEntries(
      day.groups.map((group) => [
        group.id,
        {
          name: group.name,
          pupils: group.pupils,
          ages: String(group.youngestYears),
          arrives: clock(group.arrivesMinute),
          leaves: clock(group.leavesMinute),
          'must-see': [...group.mustSee],
          lunch: group.hasLunch,
        },
      ]),
    ),
    stations: Object.fromEntries(
      day.stations.map((station) => [
        station.id,
        {
          name: station.name,
          place: station.place,
          pupils: station.pupilsAtOnce,
          groups: station.groupsAtOnce,
          shut: fromOne(station.shutSlots),
          'from-age': station.fromYears,
          adults: station.adults,
          ...(station.skill === null ? {} : { skill: station.skill }),
        },
      ]),
    ),
    adults: Object.fromEntries(
      day.adults.map((adult) => [
        adult.id,
        {
          role: adult.role,
          skills: [...adult.skills],
          free: fromOne(adult.freeSlots),
          lunch: adult.hasLunch,
          ...(adult.mostInARow === null ? {} : { 'most-in-a-row': adult.mostInARow }),
        },
      ]),
    ),
    fixed: day.fixed.map(({ group, slot, at }) => ({
      group: day.groups[group]?.id,
      slot: slot + 1,
      at: at.kind === 'station' ? day.stations[at.station]?.id : at.kind,
    })),
  });
}
