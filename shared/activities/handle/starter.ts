import type { Site } from '../../library/library.ts';
import { starters } from '../../words/en/starters.ts';

const MOST_PIECES = 4;

/** A session to begin from: finds one each of a few kinds, all as copies without an edge. */
export function startHandle({ pits }: Site): Readonly<Record<string, unknown>> {
  const finds = pits.flatMap((pit) => pit.finds).filter(({ role }) => role === 'evidence');
  const kinds = new Map(finds.map((find) => [find.attributes['object-type'], find.id]));
  return {
    title: starters.handleTitle,
    pieces: [...kinds.values()].slice(0, MOST_PIECES).map((find) => ({ find, is: 'blunt-replica' })),
    minutes: 10,
  };
}
