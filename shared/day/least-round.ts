import type { Day } from './day.ts';

const MOST_PLACES = 12;

/**
 * The fewest minutes on foot through all of some places, in any order: from the gate and back to it, or from any of them
 * to any other where `gate` is null. 0 for no place at all, and for more than twelve, where it is not worked out.
 *
 * Source: Held & Karp 1962 (FM).
 *
 * @example leastRound([[0, 2], [2, 0]], [1], 0) // 4
 */
function leastRound(
  walkMinutes: readonly (readonly number[])[],
  places: readonly number[],
  gate: number | null,
): number {
  if (places.length === 0 || places.length > MOST_PLACES) return 0;
  const minutes = (from: number | null | undefined, to: number | null | undefined): number =>
    from === null || to === null || from === undefined || to === undefined
      ? 0
      : (walkMinutes[from]?.[to] ?? 0);
  const all = 2 ** places.length - 1;
  // By set of places met, as bits, and by the last of them.
  const best = Array.from({ length: all + 1 }, () => places.map(() => Number.POSITIVE_INFINITY));
  const lower = (met: number, last: number, value: number): void => {
    const row = best[met];
    if (row !== undefined && value < (row[last] ?? 0)) row[last] = value;
  };
  for (const [index, place] of places.entries()) lower(2 ** index, index, minutes(gate, place));
  for (let met = 1; met <= all; met += 1) {
    for (const [last, place] of places.entries()) {
      const sofar = best[met]?.[last] ?? Number.POSITIVE_INFINITY;
      if (sofar === Number.POSITIVE_INFINITY) continue;
      for (const [next, other] of places.entries()) {
        if ((met & (2 ** next)) === 0) lower(met + 2 ** next, next, sofar + minutes(place, other));
      }
    }
  }
  return Math.min(...places.map((place, last) => (best[all]?.[last] ?? 0) + minutes(place, gate)));
}

/** The fewest minutes that a group can walk in a day, whatever the timetable. */
export function leastWalk(day: Day, group: number): number {
  const who = day.groups[group];
  const wanted = day.stations.filter(({ id }) => who?.mustSee.includes(id)).map(({ place }) => place);
  const eaten = who?.hasLunch === true && day.lunch !== null ? [day.lunch.place] : [];
  const places = [...new Set([...wanted, ...eaten])].map((place) => day.places.indexOf(place));
  return leastRound(day.walkMinutes, places, day.gate === null ? null : day.places.indexOf(day.gate));
}
