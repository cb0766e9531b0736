import type { ActivityOf } from '../../shared/activities/index.ts';
import { estimateScreen } from '../components/estimate-screen.ts';
import { howOf, stripOf, subjectOf } from './estimate-parts.ts';
import type { MadeScreen, ScreenPlace } from './made-screen.ts';

/** An estimate for a pack, with the figures it stands on. */
export const estimateView = (
  activity: ActivityOf<'estimate'>,
  { lesson, plan, library, around }: ScreenPlace,
): MadeScreen => ({
  view: {
    screen: 'estimate',
    props: estimateScreen(lesson, plan, activity, library),
    subject: subjectOf(activity, around),
    how: howOf(activity),
    strip: activity.strip === null ? null : stripOf(activity.strip),
  },
  question: activity.question,
  drawings: [],
});
