import type { ActivityOf } from '../../shared/activities/index.ts';
import type { Plan } from '../../shared/compile/index.ts';
import { describeFind } from '../../shared/drawing/index.ts';
import { youngest, type Library } from '../../shared/library/index.ts';
import { catalogues, wordsFor } from '../../shared/words/index.ts';
import type { PlanView, SortProps } from '../islands/sort-view.ts';
import { drawnFind, drawnPlan, viewBoxOf } from './drawn.ts';
import { SHOWS_WORKING } from '../../shared/telling/shows-working.ts';
import { faceSymbol, type Symbol } from './symbols.ts';
import { withoutPhotos } from './without-photos.ts';

/** What a page needs for a sort on screen: the island's props, and the drawings it points to. */
export function sortScreen(
  lesson: string,
  plan: Plan,
  activity: ActivityOf<'sort'>,
  library: Library,
): { readonly props: SortProps; readonly symbols: readonly Symbol[] } {
  const band = youngest(plan.bands);
  const faces = activity.finds.map(({ id, drawing }) => ({ id, face: drawnFind(drawing, 'face') }));
  const symbols: Symbol[] = [
    ...activity.finds.map(({ drawing }) => faceSymbol(drawing)),
    ...activity.finds.map(({ id, drawing }) => {
      const full = drawnFind(drawing, 'full');
      return { id: `full-${id}`, viewBox: viewBoxOf(full), markup: full.markup };
    }),
  ];
  let view: PlanView | null = null;
  if (activity.pit !== null) {
    // In the order of their ids: a pit is laid out alike however its finds were dealt.
    const drawn = drawnPlan(
      activity.pit,
      activity.finds.map(({ drawing }) => drawing).toSorted((a, b) => (a.id < b.id ? -1 : 1)),
    );
    const groundId = `ground-${activity.id}`;
    symbols.push({ id: groundId, viewBox: `0 0 ${drawn.widthMm} ${drawn.heightMm}`, markup: drawn.markup });
    view = {
      widthMm: drawn.widthMm,
      heightMm: drawn.heightMm,
      tagSideMm: drawn.tagSideMm,
      groundId,
      places: drawn.places.map((place) => {
        const face = faces.find(({ id }) => id === place.id)?.face.viewBox;
        return {
          ...place,
          boxWidthMm: (face?.width ?? 0) * place.enlarged,
          boxHeightMm: (face?.height ?? 0) * place.enlarged,
        };
      }),
    };
  }
  const props: SortProps = {
    lesson,
    activity: withoutPhotos(activity),
    words: wordsFor(catalogues.en.sort, band),
    plan: view,
    showsWorking: plan.bands.some((each) => SHOWS_WORKING[each]),
    seen: Object.fromEntries(activity.finds.map(({ id, drawing }) => [id, describeFind(drawing).blind])),
    attributes: Object.fromEntries(library.vocabulary.attributes.map(({ id, label }) => [id, label])),
  };
  return { props, symbols };
}
