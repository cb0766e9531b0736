import type { ActivityOf } from '../../shared/activities/index.ts';
import type { Plan } from '../../shared/compile/index.ts';
import { describeFind } from '../../shared/drawing/index.ts';
import { youngest } from '../../shared/library/index.ts';
import { catalogues, say, wordsFor } from '../../shared/words/index.ts';
import type { HandleProps } from '../islands/handle-view.ts';
import { drawnFind, viewBoxOf } from './drawn.ts';
import { faceSymbol, type Symbol } from './symbols.ts';

/** What a page needs for a handling session on screen: the island's props, the question, and the drawings it points to. */
export function handleScreen(
  lesson: string,
  plan: Plan,
  activity: ActivityOf<'handle'>,
): { readonly props: HandleProps; readonly question: string; readonly symbols: readonly Symbol[] } {
  const { pieces } = activity;
  const words = wordsFor(catalogues.en.handle, youngest(plan.bands));
  return {
    props: {
      lesson,
      activity,
      words,
      seen: Object.fromEntries(pieces.map(({ id, drawing }) => [id, describeFind(drawing).blind])),
    },
    question: activity.question ?? say(words.question),
    symbols: [
      ...pieces.map(({ drawing }) => faceSymbol(drawing)),
      ...pieces.map(({ id, drawing }) => {
        const full = drawnFind(drawing, 'full');
        return { id: `full-${id}`, viewBox: viewBoxOf(full), markup: full.markup };
      }),
    ],
  };
}
