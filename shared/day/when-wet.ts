import type { Day } from './day.ts';

/** A day in the rain, and the ids of the stations that are left out of it. */
export interface WetDay {
  readonly day: Day;
  readonly leftOut: readonly string[];
}

/** The day without the stations that rain shuts; nobody has to see those. */
export function whenWet(day: Day): WetDay {
  const leftOut = day.stations.filter(({ isOpenWhenWet }) => !isOpenWhenWet).map(({ id }) => id);
  return {
    leftOut,
    day: {
      ...day,
      stations: day.stations.filter(({ id }) => !leftOut.includes(id)),
      groups: day.groups.map((group) => ({
        ...group,
        mustSee: group.mustSee.filter((id) => !leftOut.includes(id)),
      })),
    },
  };
}
