import type { ActivityOf } from '../../shared/activities/index.ts';
import { talkScreen } from '../components/talk-screen.ts';
import type { MadeScreen, ScreenPlace } from './made-screen.ts';

/** A talk for a pack. */
export const talkView = (activity: ActivityOf<'talk'>, { lesson, plan }: ScreenPlace): MadeScreen => ({
  view: { screen: 'talk', props: talkScreen(lesson, plan, activity) },
  question: activity.question,
  drawings: [],
});
