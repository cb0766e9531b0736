import type { ActivityOf } from '../../shared/activities/index.ts';
import type { Plan } from '../../shared/compile/index.ts';
import { youngest } from '../../shared/library/index.ts';
import { catalogues, wordsFor } from '../../shared/words/index.ts';
import { stepDrawingId, type OrderProps } from '../islands/order-view.ts';
import { viewBoxOf } from './drawn.ts';
import { drawnStep } from './drawn-step.ts';
import { SHOWS_WORKING } from '../../shared/telling/shows-working.ts';
import type { Symbol } from './symbols.ts';
import { withoutPhotos } from './without-photos.ts';

/** What a page needs for an order on screen: the island's props, and the drawings it points to. */
export function orderScreen(
  lesson: string,
  plan: Plan,
  activity: ActivityOf<'order'>,
): { readonly props: OrderProps; readonly symbols: readonly Symbol[] } {
  const drawings = activity.steps.flatMap(({ id, drawing }) => {
    const drawn = drawnStep(drawing);
    return drawn === null ? [] : [{ step: id, drawn }];
  });
  return {
    props: {
      lesson,
      activity: withoutPhotos(activity),
      words: wordsFor(catalogues.en.order, youngest(plan.bands)),
      drawn: drawings.map(({ step }) => step),
      showsWorking: plan.bands.some((band) => SHOWS_WORKING[band]),
    },
    symbols: drawings.map(({ step, drawn }) => ({
      id: stepDrawingId(activity.id, step),
      viewBox: viewBoxOf(drawn),
      markup: drawn.markup,
    })),
  };
}
