import { nearest } from '../lesson/nearest.ts';
import type { Fault } from '../lesson/problem.ts';
import { dayProblems } from '../words/en/day-problems.ts';
import { shapeWords } from '../words/en/problems.ts';
import type { DayParts } from './day-file.ts';

type Walking = NonNullable<DayParts['walking']>;

/**
 * Shortest minutes between every two places of a day, by way of others where that is shorter. A way may lead by a crossing
 * that is no place of the day. Source: Floyd 1962 (FM).
 *
 * @example walkMatrix(['gate', 'tent'], [{ from: 'gate', to: 'tent', minutes: 2 }]) // [[0, 2], [2, 0]]
 */
export function walkMatrix(places: readonly string[], walking: Walking): readonly (readonly number[])[] {
  const all = [...new Set([...places, ...walking.flatMap(({ from, to }) => [from, to])])];
  const minutes = all.map((_, from) => all.map((__, to) => (from === to ? 0 : Number.POSITIVE_INFINITY)));
  const lower = (from: number, to: number, value: number): void => {
    const row = minutes[from];
    if (row !== undefined && value < (row[to] ?? 0)) row[to] = value;
  };
  for (const walk of walking) {
    const [from, to] = [all.indexOf(walk.from), all.indexOf(walk.to)];
    lower(from, to, walk.minutes);
    lower(to, from, walk.minutes);
  }
  const between = (from: number, to: number): number => minutes[from]?.[to] ?? 0;
  for (const by of all.keys())
    for (const from of all.keys())
      for (const to of all.keys()) lower(from, to, between(from, by) + between(by, to));
  return minutes.slice(0, places.length).map((row) => row.slice(0, places.length));
}

/** Places that cannot be reached; and, as a caution, a name that stands once among the walks and nowhere else. */
export function walkFaults(
  places: readonly string[],
  minutes: readonly (readonly number[])[],
  walking: Walking,
): readonly Fault[] {
  const ends = walking.flatMap(({ from, to }) => [from, to]);
  const strange = walking.flatMap((walk, index) =>
    (['from', 'to'] as const).flatMap((key): readonly Fault[] => {
      const word = walk[key];
      if (places.includes(word) || ends.filter((end) => end === word).length > 1) return [];
      const near = nearest(word, places);
      return [
        {
          code: 'word-unknown',
          grade: 'caution',
          path: ['walking', index, key],
          ...shapeWords.unknownWord(word, near, places),
          ...(near === null ? {} : { replacement: near }),
        },
      ];
    }),
  );
  const lost = places.find((_, to) => minutes[0]?.[to] === Number.POSITIVE_INFINITY);
  if (lost === undefined) return strange;
  const words = dayProblems.noWay(places[0] ?? '', lost);
  return [...strange, { code: 'value-unfit', grade: 'error', path: ['walking'], ...words }];
}
