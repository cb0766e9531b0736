import type { ClassActivity, GatheringActivity } from '../../shared/activities/scorers.ts';
import type { Plan } from '../../shared/compile/index.ts';
import { drawGood } from '../../shared/drawing/index.ts';
import { BANDS, youngest, type Band } from '../../shared/library/index.ts';
import { catalogues, wordsFor } from '../../shared/words/index.ts';
import type { BarterProps } from '../islands/barter-view.ts';
import type { ClassProps } from '../islands/barter-class-view.ts';
import { goodDrawingId } from '../islands/good-drawing-id.ts';
import { viewBoxOf } from './drawn.ts';
import type { Symbol } from './symbols.ts';

const reaches = (plan: Plan, from: Band): boolean =>
  plan.bands.some((band) => BANDS.indexOf(band) >= BANDS.indexOf(from));

/** The small drawings of the goods of an activity, kept once in a page. */
export const goodSymbols = (goods: ClassActivity['goods']): readonly Symbol[] =>
  goods.map(({ id }) => {
    const drawn = drawGood(id);
    return { id: goodDrawingId(id), viewBox: viewBoxOf(drawn), markup: drawn.markup };
  });

/** What a page needs for a gathering of a class. */
export const classScreen = (lesson: string, plan: Plan, activity: ClassActivity): ClassProps => ({
  lesson,
  activity,
  words: wordsFor(catalogues.en.barterClass, youngest(plan.bands)),
  showsWorking: reaches(plan, '9-11'),
});

/** What a page needs for a gathering on screen. */
export function gatheringScreen(lesson: string, plan: Plan, activity: GatheringActivity): BarterProps {
  const band = youngest(plan.bands);
  return {
    lesson,
    activity,
    words: wordsFor(catalogues.en.barter, band),
    refusals: wordsFor(catalogues.en.barterRefusals, band),
    showsWorking: reaches(plan, '9-11'),
    showsViews: reaches(plan, '11-14'),
  };
}
