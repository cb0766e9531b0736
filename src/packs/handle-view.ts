import type { ActivityOf } from '../../shared/activities/index.ts';
import { handleScreen } from '../components/handle-screen.ts';
import type { MadeScreen, ScreenPlace } from './made-screen.ts';

/** A handling session for a pack. */
export function handleView(activity: ActivityOf<'handle'>, { lesson, plan }: ScreenPlace): MadeScreen {
  const { props, question, symbols } = handleScreen(lesson, plan, activity);
  return { view: { screen: 'handle', props }, question, drawings: symbols };
}
