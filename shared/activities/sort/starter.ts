import type { Site } from '../../library/library.ts';
import { starters } from '../../words/en/starters.ts';

/** A sort to begin from: the pit with the fewest finds that still make one, in trays of the pupils' own. */
export function startSort({ pits }: Site): Readonly<Record<string, unknown>> {
  const [pit] = pits
    .filter(({ finds }) => finds.length >= 4)
    .toSorted((a, b) => a.finds.length - b.finds.length);
  return {
    title: starters.sortTitle,
    finds: { pit: pit?.id ?? pits[0]?.id ?? '' },
    by: 'made-by',
    trays: 'ours',
    minutes: 10,
  };
}
