import type { ActivityOf } from '../../shared/activities/index.ts';
import type { Plan } from '../../shared/compile/index.ts';
import { youngest } from '../../shared/library/index.ts';
import { catalogues, wordsFor } from '../../shared/words/index.ts';
import type { CompareProps } from '../islands/compare-view.ts';
import { drawingId } from '../islands/drawing-id.ts';
import { SHOWS_WORKING } from '../../shared/telling/shows-working.ts';
import { faceSymbol, type Symbol } from './symbols.ts';

/** What a page needs for a comparison on screen: the island's props, and each kind's drawing. */
export function compareScreen(
  lesson: string,
  plan: Plan,
  activity: ActivityOf<'compare'>,
): { readonly props: CompareProps; readonly symbols: readonly Symbol[] } {
  return {
    props: {
      lesson,
      // The finds of the pits are drawn by the page; the island counts kinds.
      activity: { ...activity, pits: activity.pits.map(({ cut }) => ({ cut, finds: [] })) },
      words: wordsFor(catalogues.en.compare, youngest(plan.bands)),
      showsWorking: plan.bands.some((band) => SHOWS_WORKING[band]),
    },
    symbols:
      activity.places === null
        ? []
        : activity.kinds.map(({ id, drawing }) => ({ ...faceSymbol(drawing), id: drawingId(id) })),
  };
}
