import type { ActivityOf } from '../../shared/activities/index.ts';
import { classScreen, gatheringScreen, goodSymbols } from '../components/barter-screen.ts';
import { barterTalk } from '../../shared/telling/barter-talk.ts';
import type { MadeScreen, ScreenPlace } from './made-screen.ts';

/** A gathering for a pack. */
export function barterView(activity: ActivityOf<'barter'>, { lesson, plan }: ScreenPlace): MadeScreen {
  const talk = barterTalk();
  const { question } = activity;
  return activity.play === 'gathering'
    ? {
        view: { screen: 'gathering', props: gatheringScreen(lesson, plan, activity), talk },
        question,
        drawings: goodSymbols(activity.world.goods),
      }
    : {
        view: { screen: 'class', props: classScreen(lesson, plan, activity), talk },
        question,
        drawings: goodSymbols(activity.goods),
      };
}
