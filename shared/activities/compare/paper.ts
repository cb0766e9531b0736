import type { Sheet } from '../kind.ts';
import type { CompareActivity } from './activity.ts';

/** A comparison on paper: what each pit holds, boxes to tick; then the record with the reading and the doubts. */
export function paperCompare(activity: CompareActivity): readonly Sheet[] {
  const { title, question, kinds, places, chance, reading, doubts } = activity;
  const pits = activity.pits.map(({ cut }) => cut.id);
  const kindNames = Object.fromEntries(kinds.map(({ id, name }) => [id, name]));
  const rows = kinds.map(({ id, name, drawing, counts }) => ({
    name,
    drawing,
    counts,
    place: places?.record[id] ?? null,
  }));
  const pairs = (chance?.pairs ?? []).map(({ first, second, likeness, tally, record }) => ({
    pits: [pits[first] ?? '', pits[second] ?? ''] as const,
    likeness,
    tally,
    record,
  }));
  const shared = { title, pits, rows, pairs, places: places?.offered ?? null, by: chance?.by ?? null };
  return [
    {
      part: 'cards',
      title,
      cards: kinds.map(({ id, name, number, drawing }) => ({ id, number, plain: name, drawing })),
    },
    { part: 'compare-sheet', question, ...shared },
    {
      part: 'compare-answers',
      ...shared,
      reading,
      doubts,
      site: chance?.site ?? null,
      keeps: chance?.keeps ?? null,
      kindNames,
    },
  ];
}
