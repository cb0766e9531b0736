import { isThere, type Day } from './day.ts';
import type { DayPlan, Doing } from './plan.ts';

/** Adults a station needs in a slot, out of those the solver sent: one with the skill first, then as many as asked. */
function neededOf(day: Day, station: number, sent: readonly number[]): readonly number[] {
  const { adults: wanted = 0, skill = null } = day.stations[station] ?? {};
  const isSkilled = (adult: number): boolean =>
    skill !== null && (day.adults[adult]?.skills.includes(skill) ?? false);
  const first = sent.filter(isSkilled).slice(0, 1);
  const rest = sent.filter((adult) => !first.includes(adult));
  return [...first, ...rest].slice(0, Math.max(wanted, first.length));
}

/** The timetable that a solver's columns say; adults it sent without need have the slot off. */
export function readPlan(day: Day, values: Readonly<Record<string, number>>): DayPlan {
  const isYes = (name: string): boolean => (values[name] ?? 0) > 0.5;
  const stations = [...day.stations.keys()];
  const groups = day.groups.map((who, group) =>
    day.slots.map((bells, slot): Doing => {
      const station = stations.find((each) => isYes(`x_${group}_${each}_${slot}`));
      if (station !== undefined) return { kind: 'station', station };
      if (isYes(`l_${group}_${slot}`)) return { kind: 'lunch' };
      return { kind: isThere(who, bells) ? 'free' : 'away' };
    }),
  );
  const isUsed = (station: number, slot: number): boolean =>
    groups.some((row) => {
      const doing = row[slot];
      return doing?.kind === 'station' && doing.station === station;
    });
  const sentTo = day.slots.map((_, slot) =>
    stations.map((station) =>
      isUsed(station, slot)
        ? neededOf(
            day,
            station,
            [...day.adults.keys()].filter((adult) => isYes(`z_${adult}_${station}_${slot}`)),
          )
        : [],
    ),
  );
  const crew = day.adults.map((_, adult) =>
    day.slots.map(
      (_slot, slot) => stations.find((station) => sentTo[slot]?.[station]?.includes(adult)) ?? null,
    ),
  );
  return { groups, crew };
}
