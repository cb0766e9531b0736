import type { DayEdit } from '../../shared/day/index.ts';
import { listOf, mapOf } from './day-fields.ts';

type Said = Readonly<Record<string, unknown>>;

/** What was fixed by hand, without a group or a station that is taken away. */
export function withoutFixed(said: Said, key: 'group' | 'at', id: string): readonly DayEdit[] {
  const rows = listOf(said['fixed']);
  const left = rows.filter((row) => mapOf(row)[key] !== id);
  return left.length === rows.length ? [] : [{ path: ['fixed'], value: left }];
}

/** Every list that names a station, without it. */
export function withoutStation(said: Said, id: string): readonly DayEdit[] {
  const listed = [
    { path: ['must-see'], list: listOf(said['must-see']) },
    ...Object.entries(mapOf(said['groups'])).map(([group, entry]) => ({
      path: ['groups', group, 'must-see'],
      list: listOf(mapOf(entry)['must-see']),
    })),
  ];
  const shorter = listed
    .filter(({ list }) => list.includes(id))
    .map(({ path, list }): DayEdit => ({ path, value: list.filter((other) => other !== id) }));
  return [...shorter, ...withoutFixed(said, 'at', id)];
}
