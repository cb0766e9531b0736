import { shuffle, type Stream } from '../../chance/index.ts';
import type { OrderActivity } from './activity.ts';
import type { OrderPlay } from './play.ts';

/** The play that agrees with the record throughout. */
export const recordLaid = (activity: OrderActivity): OrderPlay => ({
  activity: activity.id,
  laid: [...activity.recorded],
});

/** A play by guessing: the cards laid as they come. */
export const guessLaid = (activity: OrderActivity, chance: Stream): OrderPlay => ({
  activity: activity.id,
  laid: shuffle(
    chance,
    activity.steps.map(({ id }) => id),
  ),
});
