import type { Activity, ActivityOf } from '../../shared/activities/index.ts';
import type { Plan } from '../../shared/compile/index.ts';
import { pitOfFind, youngest, type Library } from '../../shared/library/index.ts';
import { catalogues, say, wordsFor } from '../../shared/words/index.ts';
import { classScreen, gatheringScreen, goodSymbols } from '../components/barter-screen.ts';
import { compareScreen } from '../components/compare-screen.ts';
import { estimateScreen } from '../components/estimate-screen.ts';
import { orderScreen } from '../components/order-screen.ts';
import { sortScreen } from '../components/sort-screen.ts';
import type { Symbol } from '../components/symbols.ts';
import type { OrderOf, ScreenView } from '../player/lesson-view.ts';
import { barterTalk } from './barter-talk.ts';
import { plansOf, tallyOf } from './compare-parts.ts';
import { howOf, stripOf, subjectOf } from './estimate-parts.ts';
import { picture } from './picture.ts';

/** An activity's screen, what it asks, and the drawings it points to. */
export interface MadeScreen {
  readonly view: ScreenView;
  readonly question: string;
  readonly drawings: readonly Symbol[];
}

/** Where a screen stands. */
export interface ScreenPlace {
  /** What the device keeps a state under. */
  readonly lesson: string;
  readonly plan: Plan;
  readonly library: Library;
}

function orderOf({ of }: ActivityOf<'order'>, plan: Plan): OrderOf | null {
  if (of === null) return null;
  const words = wordsFor(catalogues.en.order, youngest(plan.bands));
  const pit = pitOfFind(of.drawing.id).replace(/^P/, '');
  return {
    picture: picture(of.drawing, 'face'),
    text: say(words.of, { name: of.name, pit }),
    number: of.number,
  };
}

/** The screen of an activity, as data: the same props that a page of the site hands to its island. */
export function screenView(activity: Activity, { lesson, plan, library }: ScreenPlace): MadeScreen {
  const band = youngest(plan.bands);
  if (activity.kind === 'sort') {
    const { props, symbols } = sortScreen(lesson, plan, activity, library);
    return { view: { screen: 'sort', props }, question: activity.question, drawings: symbols };
  }
  if (activity.kind === 'order') {
    const { props, symbols } = orderScreen(lesson, plan, activity);
    const question = activity.question ?? say(wordsFor(catalogues.en.order, band).question);
    return { view: { screen: 'order', props, of: orderOf(activity, plan) }, question, drawings: symbols };
  }
  if (activity.kind === 'estimate') {
    const view: ScreenView = {
      screen: 'estimate',
      props: estimateScreen(lesson, plan, activity, library),
      subject: subjectOf(activity),
      how: howOf(activity),
      strip: activity.strip === null ? null : stripOf(activity.strip),
    };
    return { view, question: activity.question, drawings: [] };
  }
  if (activity.kind === 'barter') {
    const talk = barterTalk();
    const isGathering = activity.play === 'gathering';
    return {
      view: isGathering
        ? { screen: 'gathering', props: gatheringScreen(lesson, plan, activity), talk }
        : { screen: 'class', props: classScreen(lesson, plan, activity), talk },
      question: activity.question,
      drawings: goodSymbols(isGathering ? activity.world.goods : activity.goods),
    };
  }
  // A kind that has no line above does not compile here.
  const { props, symbols } = compareScreen(lesson, plan, activity);
  const words = wordsFor(catalogues.en.compare, band);
  const tally = tallyOf(activity);
  const isPlaces = activity.places !== null;
  return {
    view: isPlaces
      ? { screen: 'places', props, plans: plansOf(activity), tally }
      : { screen: 'chance', props, tally },
    question: activity.question ?? say(isPlaces ? words.questionPlaces : words.questionChance),
    drawings: symbols,
  };
}
