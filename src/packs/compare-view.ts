import type { ActivityOf } from '../../shared/activities/index.ts';
import { youngest } from '../../shared/library/index.ts';
import { catalogues, say, wordsFor } from '../../shared/words/index.ts';
import { compareScreen } from '../components/compare-screen.ts';
import { plansOf, tallyOf } from './compare-parts.ts';
import type { MadeScreen, ScreenPlace } from './made-screen.ts';

/** A comparison of pits for a pack. */
export function compareView(
  activity: ActivityOf<'compare'>,
  { lesson, plan, around }: ScreenPlace,
): MadeScreen {
  const { props, symbols } = compareScreen(lesson, plan, activity);
  around.keep(symbols);
  const words = wordsFor(catalogues.en.compare, youngest(plan.bands));
  const tally = tallyOf(
    activity.pits.map(({ cut }) => cut.id),
    activity.kinds,
    around,
  );
  const isPlaces = activity.places !== null;
  return {
    view: isPlaces
      ? { screen: 'places', props, plans: plansOf(activity, around), tally }
      : { screen: 'chance', props, tally },
    question: activity.question ?? say(isPlaces ? words.questionPlaces : words.questionChance),
    drawings: symbols,
  };
}
