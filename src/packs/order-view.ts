import type { ActivityOf } from '../../shared/activities/index.ts';
import { pitOfFind, youngest } from '../../shared/library/index.ts';
import { catalogues, say, wordsFor } from '../../shared/words/index.ts';
import { orderScreen } from '../components/order-screen.ts';
import type { MadeScreen, ScreenPlace } from './made-screen.ts';

/** An order for a pack, with the find whose making it is. */
export function orderView(activity: ActivityOf<'order'>, { lesson, plan, around }: ScreenPlace): MadeScreen {
  const { props, symbols } = orderScreen(lesson, plan, activity);
  const words = wordsFor(catalogues.en.order, youngest(plan.bands));
  const { of } = activity;
  return {
    view: {
      screen: 'order',
      props,
      of:
        of === null
          ? null
          : {
              drawn: around.find(of.drawing, 'face'),
              text: say(words.of, { name: of.name, pit: pitOfFind(of.drawing.id).replace(/^P/, '') }),
              number: of.number,
            },
    },
    question: activity.question ?? say(words.question),
    drawings: symbols,
  };
}
