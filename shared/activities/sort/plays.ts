import { uniformBelow, type Stream } from '../../chance/index.ts';
import type { SortActivity } from './activity.ts';
import type { SortPlay } from './play.ts';

/** The play that agrees with the record throughout. */
export const recordSort = (activity: SortActivity): SortPlay => ({
  activity: activity.id,
  placed: Object.fromEntries(
    activity.finds.map((find) => [find.id, find.homes[0]?.tray ?? find.attributes[activity.by]]),
  ),
});

/** A play by guessing: every find into a tray drawn at random. */
export function guessSort(activity: SortActivity, chance: Stream): SortPlay {
  const trays = activity.ownTrays ? ['1', '2', '3'] : activity.trays.map(({ id }) => id);
  return {
    activity: activity.id,
    placed: Object.fromEntries(
      activity.finds.map((find) => [find.id, trays[uniformBelow(chance, trays.length)] ?? '']),
    ),
  };
}
