import type { Site } from '../../library/library.ts';
import { starters } from '../../words/en/starters.ts';

/** A handling to begin from: one find of each of three types, as copies without an edge. */
export function startHandle({ pits }: Site): Readonly<Record<string, unknown>> {
  const finds = pits.flatMap((pit) => pit.finds).filter(({ role }) => role === 'evidence');
  const oneOfEach = new Map(finds.map((find) => [find.attributes['object-type'], find.id]));
  return {
    title: starters.handleTitle,
    pieces: [...oneOfEach.values()].slice(0, 3).map((find) => ({ find, is: 'blunt-replica' })),
    minutes: 10,
  };
}
