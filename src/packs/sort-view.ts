import type { ActivityOf } from '../../shared/activities/index.ts';
import { sortScreen } from '../components/sort-screen.ts';
import type { MadeScreen, ScreenPlace } from './made-screen.ts';

/** A sort for a pack. */
export function sortView(activity: ActivityOf<'sort'>, { lesson, plan, library }: ScreenPlace): MadeScreen {
  const { props, symbols } = sortScreen(lesson, plan, activity, library);
  return { view: { screen: 'sort', props }, question: activity.question, drawings: symbols };
}
