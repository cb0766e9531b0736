import { shuffle, stream, uniformBelow, type Stream } from '../../../shared/chance/index.ts';
import type { Day, DayAdult, DayGroup, DayStation } from '../../../shared/day/index.ts';

/** Slots of 20 minutes with 5 between, from nine o'clock. */
export const slotsOf = (count: number) =>
  Array.from({ length: count }, (_, slot) => ({ fromMinute: 540 + 25 * slot, toMinute: 560 + 25 * slot }));

export const stationOf = (index: number, more: Partial<DayStation> = {}): DayStation => ({
  id: `s${index}`,
  name: `Station ${index}`,
  place: `p${index}`,
  pupilsAtOnce: 30,
  groupsAtOnce: 1,
  shutSlots: [],
  isOpenWhenWet: true,
  fromYears: 0,
  adults: 1,
  skill: null,
  kit: [],
  sheetsEach: 0,
  ...more,
});

export const groupOf = (
  index: number,
  mustSee: readonly string[],
  more: Partial<DayGroup> = {},
): DayGroup => ({
  id: `g${index}`,
  name: `Group ${index}`,
  pupils: 10,
  youngestYears: 8,
  arrivesMinute: 0,
  leavesMinute: 1440,
  mustSee,
  hasLunch: false,
  ...more,
});

export const adultOf = (index: number, slots: number, more: Partial<DayAdult> = {}): DayAdult => ({
  id: `a${index}`,
  role: `Adult ${index}`,
  skills: [],
  freeSlots: Array.from({ length: slots }, (_, slot) => slot),
  mostInARow: null,
  hasLunch: false,
  ...more,
});

/** Groups × stations × slots, every group to see every station, each station a place of its own. */
export function squareDay(groups: number, stations: number, slots: number, more: Partial<Day> = {}): Day {
  const at = Array.from({ length: stations }, (_, index) => stationOf(index));
  return {
    title: 'A day for a test',
    date: null,
    slots: slotsOf(slots),
    groups: Array.from({ length: groups }, (_, index) =>
      groupOf(
        index,
        at.map(({ id }) => id),
      ),
    ),
    stations: at,
    adults: [],
    lunch: null,
    fixed: [],
    mayWalkLate: false,
    gate: null,
    places: at.map(({ place }) => place),
    walkMinutes: at.map((_, from) => at.map((__, to) => (from === to ? 0 : 1))),
    ...more,
  };
}

/** True once in `in` times. */
const once = (chance: Stream, every: number): boolean => uniformBelow(chance, every) === 0;

/** A day at random: some of these cannot be. */
export function randomDay(seed: string, most: { groups: number; stations: number; slots: number }): Day {
  const chance = stream(seed);
  const upTo = (count: number): number => 1 + uniformBelow(chance, count);
  const slots = 1 + upTo(most.slots - 1);
  const places = ['p0', 'p1', 'p2'].slice(0, upTo(3));
  const spots = places.map(() => uniformBelow(chance, 7));
  const some = (count: number): number[] => shuffle(chance, [...Array.from({ length: count }).keys()]);
  const stations = Array.from({ length: upTo(most.stations) }, (_, index) =>
    stationOf(index, {
      place: places[uniformBelow(chance, places.length)] ?? 'p0',
      pupilsAtOnce: 8 + uniformBelow(chance, 14),
      groupsAtOnce: once(chance, 4) ? 2 : 1,
      shutSlots: once(chance, 3) ? some(slots).slice(0, 1) : [],
      fromYears: once(chance, 12) ? 8 : 0,
      skill: once(chance, 3) ? 'flint' : null,
      adults: once(chance, 8) ? 2 : 1,
    }),
  );
  const lunch = once(chance, 3)
    ? {
        slots: some(slots)
          .slice(0, 2)
          .toSorted((a, b) => a - b),
        places: 10 + uniformBelow(chance, 20),
        place: 'p0',
      }
    : null;
  const groups = Array.from({ length: upTo(most.groups) }, (_, index) =>
    groupOf(
      index,
      stations.filter(() => !once(chance, 3)).map(({ id }) => id),
      {
        pupils: 4 + uniformBelow(chance, 6),
        youngestYears: once(chance, 12) ? 6 : 8,
        arrivesMinute: once(chance, 5) ? 565 : 0,
        hasLunch: lunch !== null,
      },
    ),
  );
  const adults = once(chance, 2)
    ? Array.from({ length: stations.length + uniformBelow(chance, 2) }, (_, index) =>
        adultOf(index, slots, {
          skills: once(chance, 2) ? ['flint'] : [],
          mostInARow: once(chance, 2) ? upTo(slots - 1) : null,
          hasLunch: lunch !== null && lunch.slots.length > 1 && once(chance, 3),
        }),
      )
    : [];
  return {
    title: seed,
    date: null,
    slots: slotsOf(slots),
    groups,
    stations,
    adults,
    lunch,
    fixed: [],
    mayWalkLate: false,
    gate: once(chance, 2) ? 'p0' : null,
    places,
    walkMinutes: spots.map((from) => spots.map((to) => Math.abs(from - to))),
  };
}
