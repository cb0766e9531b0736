import type { Site } from '../../library/library.ts';
import { starters } from '../../words/en/starters.ts';

/** A comparison to begin from: the two pits that hold most. */
export const startCompare = ({ pits }: Site): Readonly<Record<string, unknown>> => ({
  title: starters.compareTitle,
  ask: 'places',
  pits: pits
    .toSorted((a, b) => b.finds.length - a.finds.length)
    .slice(0, 2)
    .map(({ id }) => id),
  minutes: 10,
});
