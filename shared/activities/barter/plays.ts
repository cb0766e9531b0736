import { aimlessEnd, aimlessPlay } from '../../bartering/index.ts';
import type { Stream } from '../../chance/index.ts';
import type { BarterActivity } from './activity.ts';
import type { BarterPlay } from './play.ts';

/** One of the shortest chains; for a class, the best exchange. */
export function recordBarter(activity: BarterActivity): BarterPlay {
  if (activity.play === 'gathering') return { activity: activity.id, swaps: activity.example };
  const { cards, takesFrom } = activity.deal;
  return {
    activity: activity.id,
    ends: takesFrom.map((number) => cards.find((card) => card.number === number)?.holds ?? ''),
  };
}

/** Aimless play: any swap that leaves both better off, until the aim or until there is none. */
export const guessBarter = (activity: BarterActivity, chance: Stream): BarterPlay =>
  activity.play === 'gathering'
    ? { activity: activity.id, swaps: aimlessPlay(activity.world, chance) }
    : { activity: activity.id, ends: aimlessEnd(activity.deal.cards, chance) };
