import { isThere, type Day } from './day.ts';
import type { DayRule } from './rules.ts';

/** A reason, found by counting alone, why a day cannot be: its numbers, and the rules it rests on. */
export type TooMany = {
  readonly rules: readonly DayRule[];
  readonly needed: number;
  readonly there: number;
} & (
  | { readonly kind: 'group-too-large'; readonly group: number; readonly station: number }
  | { readonly kind: 'group-too-young'; readonly group: number; readonly station: number }
  | { readonly kind: 'group-slots'; readonly group: number }
  | { readonly kind: 'station-slots'; readonly station: number }
  | { readonly kind: 'lunch-seats' }
  | { readonly kind: 'skill-slots'; readonly skill: string }
  | { readonly kind: 'crew-slots' }
);

/** The most slots of those free that can be worked with no run longer than allowed. */
function mostWorked(freeSlots: readonly number[], mostInARow: number | null, slots: number): number {
  let worked = 0;
  let run = 0;
  for (let slot = 0; slot < slots; slot += 1) {
    const isWorked = freeSlots.includes(slot) && (mostInARow === null || run < mostInARow);
    run = isWorked ? run + 1 : 0;
    if (isWorked) worked += 1;
  }
  return worked;
}

/** Groups that must see a station. */
const wanting = (day: Day, station: number): readonly number[] =>
  [...day.groups.keys()].filter((group) =>
    day.groups[group]?.mustSee.includes(day.stations[station]?.id ?? ''),
  );

function countGroups(day: Day): readonly TooMany[] {
  return [...day.groups.entries()].flatMap(([group, who]): readonly TooMany[] => {
    const wanted = [...day.stations.entries()].filter(([, { id }]) => who.mustSee.includes(id));
    const mustSee = (station: number): DayRule => ({ kind: 'must-see', group, station });
    const unfit = wanted.flatMap(([station, at]): readonly TooMany[] => [
      ...(who.pupils > at.pupilsAtOnce
        ? [
            {
              kind: 'group-too-large',
              group,
              station,
              needed: who.pupils,
              there: at.pupilsAtOnce,
              rules: [{ kind: 'pupils-at-once', station }, mustSee(station)],
            } as const,
          ]
        : []),
      ...(who.youngestYears < at.fromYears
        ? [
            {
              kind: 'group-too-young',
              group,
              station,
              needed: at.fromYears,
              there: who.youngestYears,
              rules: [{ kind: 'ages', station }, mustSee(station)],
            } as const,
          ]
        : []),
    ]);
    const isEating = who.hasLunch && day.lunch !== null;
    const needed = wanted.length + (isEating ? 1 : 0);
    const there = day.slots.filter((bells) => isThere(who, bells)).length;
    if (needed <= there) return unfit;
    const lunch: readonly DayRule[] = isEating ? [{ kind: 'lunch', group }] : [];
    const rules = [
      ...lunch,
      { kind: 'present', group } as const,
      ...wanted.map(([station]) => mustSee(station)),
    ];
    return [...unfit, { kind: 'group-slots', group, needed, there, rules }];
  });
}

function countStations(day: Day): readonly TooMany[] {
  return [...day.stations.entries()].flatMap(([station, at]): readonly TooMany[] => {
    const groups = wanting(day, station);
    const open = day.slots.length - at.shutSlots.length;
    if (groups.length <= open * at.groupsAtOnce) return [];
    const shut: readonly DayRule[] = at.shutSlots.length > 0 ? [{ kind: 'shut', station }] : [];
    const rules: readonly DayRule[] = [
      { kind: 'groups-at-once', station },
      ...shut,
      ...groups.map((group): DayRule => ({ kind: 'must-see', group, station })),
    ];
    return [{ kind: 'station-slots', station, needed: groups.length, there: open * at.groupsAtOnce, rules }];
  });
}

function countLunch({ lunch, groups }: Day): readonly TooMany[] {
  if (lunch === null) return [];
  const eating = [...groups.entries()].filter(([, { hasLunch }]) => hasLunch);
  const needed = eating.reduce((heads, [, { pupils }]) => heads + pupils, 0);
  const there = lunch.slots.length * lunch.places;
  const rules: readonly DayRule[] = [
    { kind: 'lunch-places' },
    ...eating.map(([group]): DayRule => ({ kind: 'lunch', group })),
  ];
  return needed > there ? [{ kind: 'lunch-seats', needed, there, rules }] : [];
}

function countCrew(day: Day): readonly TooMany[] {
  if (day.adults.length === 0) return [];
  const staffed = day.stations.map(({ groupsAtOnce }, station) =>
    Math.ceil(wanting(day, station).length / groupsAtOnce),
  );
  const workedBy = day.adults.map(({ freeSlots, mostInARow }) =>
    mostWorked(freeSlots, mostInARow, day.slots.length),
  );
  const adultRules = (adult: number): readonly DayRule[] => [
    ...(day.adults[adult]?.mostInARow === null ? [] : [{ kind: 'adult-break', adult } as const]),
    { kind: 'adult-free', adult },
  ];
  const stationRules = (station: number, kind: 'crew' | 'skill'): readonly DayRule[] => [
    { kind, station },
    { kind: 'groups-at-once', station },
    ...wanting(day, station).map((group): DayRule => ({ kind: 'must-see', group, station })),
  ];
  const total = (numbers: readonly number[]): number => numbers.reduce((sum, number) => sum + number, 0);
  const skills = [...new Set(day.stations.flatMap(({ skill }) => skill ?? []))];
  const bySkill = skills.flatMap((skill): readonly TooMany[] => {
    const stations = [...day.stations.keys()].filter((station) => day.stations[station]?.skill === skill);
    const able = [...day.adults.keys()].filter((adult) => day.adults[adult]?.skills.includes(skill));
    const needed = total(stations.map((station) => staffed[station] ?? 0));
    const there = total(able.map((adult) => workedBy[adult] ?? 0));
    const rules = [
      ...able.flatMap(adultRules),
      ...stations.flatMap((station) => stationRules(station, 'skill')),
    ];
    return needed > there ? [{ kind: 'skill-slots', skill, needed, there, rules }] : [];
  });
  const stations = [...day.stations.keys()].filter((station) => (day.stations[station]?.adults ?? 0) > 0);
  const needed = total(
    stations.map((station) => (day.stations[station]?.adults ?? 0) * (staffed[station] ?? 0)),
  );
  const there = total(workedBy);
  const rules = [
    ...[...day.adults.keys()].flatMap(adultRules),
    ...stations.flatMap((station) => stationRules(station, 'crew')),
  ];
  return needed > there ? [...bySkill, { kind: 'crew-slots', needed, there, rules }] : bySkill;
}

/** Every reason against a day that counting finds; [] says only that counting finds none. */
export const countDay = (day: Day): readonly TooMany[] => [
  ...countGroups(day),
  ...countStations(day),
  ...countLunch(day),
  ...countCrew(day),
];
