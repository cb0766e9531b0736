import type { Day } from '../../shared/day/index.ts';
import { adultOf, groupOf, squareDay, stationOf } from '../shared/day/make-day.ts';

const range = (count: number): readonly number[] => Array.from({ length: count }, (_, index) => index);

/** Twelve groups at eight stations in eight slots, two groups at a station at once. */
function twelve(places: number, minutes: (from: number, to: number) => number, more: Partial<Day>): Day {
  const stations = range(8).map((index) =>
    stationOf(index, { place: `p${Math.floor((index * places) / 8)}`, groupsAtOnce: 2 }),
  );
  return {
    ...squareDay(12, 8, 8),
    stations,
    places: range(places).map((place) => `p${place}`),
    walkMinutes: range(places).map((from) => range(places).map((to) => minutes(from, to))),
    ...more,
  };
}

const crew = (count: number) => range(count).map((index) => adultOf(index, 8, { mostInARow: 6 }));
const line = (step: number) => (from: number, to: number) => Math.abs(from - to) * step;
const ring = (size: number, step: number) => (from: number, to: number) =>
  Math.min((from - to + size) % size, (to - from + size) % size) * step;

/** Each of twelve groups leaves out one station, another for each. */
const pickers = range(12).map((index) =>
  groupOf(
    index,
    range(8)
      .filter((station) => station !== index % 8)
      .map((station) => `s${station}`),
  ),
);

/** The days that planning is measured on. */
export const dayCases: readonly { readonly name: string; readonly day: Day }[] = [
  { name: 'each station a place of its own, ring', day: twelve(8, ring(8, 1), {}) },
  { name: 'four places in a line, crew of nine', day: twelve(4, line(2), { adults: crew(9) }) },
  {
    name: 'four places in a line, gate, crew of nine',
    day: twelve(4, line(1), { adults: crew(9), gate: 'p0' }),
  },
  {
    name: 'four places in a ring, gate, crew of nine',
    day: twelve(4, ring(4, 2), { adults: crew(9), gate: 'p0' }),
  },
  {
    name: 'four places in a line, each group its own list, crew of nine',
    day: twelve(4, line(2), { adults: crew(9), groups: pickers }),
  },
];
