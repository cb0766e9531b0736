import type { Activity, ActivityOf, KindName } from '../../shared/activities/index.ts';
import { barterView } from './barter-view.ts';
import { compareView } from './compare-view.ts';
import { estimateView } from './estimate-view.ts';
import { handleView } from './handle-view.ts';
import type { MadeScreen, ScreenPlace } from './made-screen.ts';
import { orderView } from './order-view.ts';
import { sortView } from './sort-view.ts';
import { talkView } from './talk-view.ts';

const views: { readonly [K in KindName]: (activity: ActivityOf<K>, place: ScreenPlace) => MadeScreen } = {
  barter: barterView,
  compare: compareView,
  estimate: estimateView,
  handle: handleView,
  order: orderView,
  sort: sortView,
  talk: talkView,
};

/** The screen of an activity, as data: the same props that a page of the site hands to its island. */
export const screenView = <K extends KindName>(
  activity: Activity & { readonly kind: K },
  place: ScreenPlace,
): MadeScreen =>
  (views[activity.kind] as (activity: Activity, place: ScreenPlace) => MadeScreen)(activity, place);
