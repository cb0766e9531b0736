import type { Day, DayFixed } from './day.ts';

/** A day in the rain, and the ids of the stations that are left out of it. */
export interface WetDay {
  readonly day: Day;
  readonly leftOut: readonly string[];
}

/** The day without the stations that rain shuts; nobody has to see those, and nobody is fixed there. */
export function whenWet(day: Day): WetDay {
  const leftOut = day.stations.filter(({ isOpenWhenWet }) => !isOpenWhenWet).map(({ id }) => id);
  const stations = day.stations.filter(({ id }) => !leftOut.includes(id));
  const dryNumber = (station: number): number =>
    stations.findIndex(({ id }) => id === day.stations[station]?.id);
  return {
    leftOut,
    day: {
      ...day,
      stations,
      groups: day.groups.map((group) => ({
        ...group,
        mustSee: group.mustSee.filter((id) => !leftOut.includes(id)),
      })),
      fixed: day.fixed.flatMap((said): readonly DayFixed[] => {
        if (said.at.kind !== 'station') return [said];
        const station = dryNumber(said.at.station);
        return station < 0 ? [] : [{ ...said, at: { kind: 'station', station } }];
      }),
    },
  };
}
