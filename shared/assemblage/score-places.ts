import { beyondGuessing, type AskedItem, type BeyondGuessing } from './beyond-guessing.ts';
import type { KindsOfTwo } from './overlap.ts';

/** Where a kind lies, seen from two pits. */
export const KIND_PLACES = ['both', 'only-first', 'only-second', 'neither'] as const;

export type KindPlace = (typeof KIND_PLACES)[number];

/** The place of each kind by the record. */
export const recordedPlaces = (kinds: KindsOfTwo): ReadonlyMap<string, KindPlace> =>
  new Map<string, KindPlace>([
    ...kinds.both.map((kind) => [kind, 'both'] as const),
    ...kinds.onlyFirst.map((kind) => [kind, 'only-first'] as const),
    ...kinds.onlySecond.map((kind) => [kind, 'only-second'] as const),
    ...kinds.neither.map((kind) => [kind, 'neither'] as const),
  ]);

/** One kind asked about, and whether what most said agrees with the record; null where nobody said. */
export interface PlaceWorking {
  readonly kind: string;
  readonly record: KindPlace;
  readonly isRight: boolean | null;
}

/** What can be said of a play of "in both, or only here?". */
export interface PlacesScore extends BeyondGuessing {
  readonly kinds: readonly PlaceWorking[];
}

/**
 * Scores which kinds were said to lie in both pits, only in one, or in neither. Kinds said nothing of count as guessed.
 *
 * @param said By kind, how often each place was said: `{ 'pig jaw': { both: 1 } }`.
 */
export function scorePlaces(
  record: ReadonlyMap<string, KindPlace>,
  said: ReadonlyMap<string, AskedItem<KindPlace>['said']>,
): PlacesScore {
  const items = [...record].map(([kind, place]) => ({ kind, record: place, said: said.get(kind) ?? {} }));
  const kinds = items.map(({ kind, record: place, said: answers }): PlaceWorking => {
    const most = Math.max(0, ...Object.values(answers));
    return { kind, record: place, isRight: most === 0 ? null : (answers[place] ?? 0) === most };
  });
  return { ...beyondGuessing(items), kinds };
}
