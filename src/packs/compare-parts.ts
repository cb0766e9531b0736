import type { ActivityOf, ComparedPits } from '../../shared/activities/index.ts';
import { catalogues, say } from '../../shared/words/index.ts';
import { comparedPlan } from '../components/compared-plan.ts';
import { tallyStrokes } from '../components/tally-strokes.ts';
import { pitNumber } from '../../shared/telling/compare-words.ts';
import type { TallyView } from '../player/beside-view.ts';
import type { Picture } from '../player/lesson-view.ts';
import type { Drawings } from './drawings.ts';

const words = catalogues.en.compare;
/** From so many pits on, figures are read sooner than strokes. */
const MANY = 4;

/** What each pit holds, in strokes for a few pits and in figures for many. */
export function tallyOf(
  pits: readonly string[],
  rows: readonly Pick<ComparedPits['rows'][number], 'name' | 'drawing' | 'counts'>[],
  drawings: Drawings,
): TallyView {
  const isFew = pits.length < MANY;
  return {
    title: say(words.tallyTitle),
    how: isFew ? say(words.tallyHow) : null,
    kind: say(words.tallyKind),
    none: say(words.tallyNone),
    pits: pits.map((id) => say(words.pit, { pit: pitNumber(id) })),
    rows: rows.map(({ name, drawing, counts }) => ({
      name,
      drawn: drawings.find(drawing, 'face'),
      cells: counts.map((count) => ({ count, strokes: isFew ? tallyStrokes(count) : null })),
    })),
  };
}

/** Each pit in plan, with what lay in it. */
export const plansOf = (
  { pits }: ActivityOf<'compare'>,
  drawings: Drawings,
): readonly { readonly picture: Picture; readonly caption: string }[] =>
  pits.map(({ cut, finds }) => ({
    picture: comparedPlan(cut, finds, (find) => drawings.find(find, 'face').id),
    caption: say(words.planCaption, { pit: pitNumber(cut.id), count: finds.length }),
  }));
