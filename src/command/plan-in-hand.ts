import * as z from 'zod';
import type { Day, DayPlan, Doing, InHand } from '../../shared/day/index.ts';

/** What `day --json` wrote, as far as a plan is made of it. */
const written = z.object({
  rounds: z
    .array(
      z.object({
        groups: z.array(
          z.object({
            group: z.string(),
            doing: z.enum(['station', 'lunch', 'free', 'away']),
            station: z.nullable(z.string()),
          }),
        ),
      }),
    )
    .min(1),
  adults: z.array(z.object({ adult: z.string(), stations: z.array(z.nullable(z.string())) })),
});

/** A plan that `day --json` wrote, read against a day: by ids; null where the text is none. */
export function readWrittenPlan(day: Day, text: string): DayPlan | null {
  let said: z.output<typeof written>;
  try {
    said = written.parse(JSON.parse(text));
  } catch {
    return null;
  }
  const stationOf = (id: string | null): number => day.stations.findIndex((station) => station.id === id);
  return {
    groups: day.groups.map(({ id }) =>
      day.slots.map((_, slot): Doing => {
        const { doing, station } = said.rounds[slot]?.groups.find(({ group }) => group === id) ?? {
          doing: 'free',
          station: null,
        };
        if (doing !== 'station') return { kind: doing };
        return stationOf(station) < 0 ? { kind: 'free' } : { kind: 'station', station: stationOf(station) };
      }),
    ),
    crew: day.adults.map(({ id }) => {
      const row = said.adults.find(({ adult }) => adult === id)?.stations ?? [];
      return day.slots.map((_, slot) => {
        const station = stationOf(row[slot] ?? null);
        return station < 0 ? null : station;
      });
    }),
  };
}

/** The plan with the slot from which it may be changed: the first that begins at that time or later; 0 where none is said. */
export function inHandFrom(day: Day, plan: DayPlan, from: string | undefined): InHand {
  if (from === undefined) return { plan, fromSlot: 0 };
  const minute = Number(from.slice(0, 2)) * 60 + Number(from.slice(3));
  const slot = day.slots.findIndex(({ fromMinute }) => fromMinute >= minute);
  return { plan, fromSlot: slot < 0 ? day.slots.length : slot };
}
