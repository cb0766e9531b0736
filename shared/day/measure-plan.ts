import { isThere, slotMinutes, type Day } from './day.ts';
import type { DayPlan } from './plan.ts';

/** Minutes of the three aims, in their order. */
export interface AimMinutes {
  /** Of all groups together. */
  readonly idleMinutes: number;
  /** Between the group that waits most and the one that waits least. */
  readonly unevenMinutes: number;
  /** Of all groups together. */
  readonly walkingMinutes: number;
}

/** What a plan comes to, group by group, in minutes. */
export interface GroupMinutes {
  readonly idleMinutes: number;
  readonly walkingMinutes: number;
}

/** The places a group is at, one after another, from the gate and back to it. */
function route(day: Day, plan: DayPlan, group: number): readonly number[] {
  const stops = (plan.groups[group] ?? []).flatMap((doing): readonly string[] => {
    if (doing.kind === 'station') return [day.stations[doing.station]?.place ?? ''];
    return doing.kind === 'lunch' && day.lunch !== null ? [day.lunch.place] : [];
  });
  const isAnyThere = day.slots.some((bells) => {
    const who = day.groups[group];
    return who !== undefined && isThere(who, bells);
  });
  const gate = day.gate === null || !isAnyThere ? [] : [day.gate];
  return [...gate, ...stops, ...gate].map((place) => day.places.indexOf(place));
}

/** Minutes with nothing on, and minutes on foot, of each group. A slot off is spent where the group is. */
export const measurePlan = (day: Day, plan: DayPlan): readonly GroupMinutes[] =>
  day.groups.map((_, group) => {
    const places = route(day, plan, group);
    return {
      idleMinutes: (plan.groups[group] ?? []).reduce((minutes, { kind }, slot) => {
        const bells = day.slots[slot];
        return kind === 'free' && bells !== undefined ? minutes + slotMinutes(bells) : minutes;
      }, 0),
      walkingMinutes: places.reduce(
        (minutes, place, step) =>
          step === 0 ? 0 : minutes + (day.walkMinutes[places[step - 1] ?? -1]?.[place] ?? 0),
        0,
      ),
    };
  });

/** The difference between the groups that wait the most and the least, in minutes. @example unevenMinutes([]) // 0 */
const unevenMinutes = (groups: readonly Pick<GroupMinutes, 'idleMinutes'>[]): number =>
  groups.length === 0
    ? 0
    : Math.max(...groups.map(({ idleMinutes }) => idleMinutes)) -
      Math.min(...groups.map(({ idleMinutes }) => idleMinutes));

/** What a plan comes to by the three aims. */
export function minutesOf(day: Day, plan: DayPlan): AimMinutes {
  const groups = measurePlan(day, plan);
  const total = (key: 'idleMinutes' | 'walkingMinutes'): number =>
    groups.reduce((minutes, group) => minutes + group[key], 0);
  return {
    idleMinutes: total('idleMinutes'),
    unevenMinutes: unevenMinutes(groups),
    walkingMinutes: total('walkingMinutes'),
  };
}
