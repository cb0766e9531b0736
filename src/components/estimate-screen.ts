import { leverTable, type ActivityOf } from '../../shared/activities/index.ts';
import type { Plan } from '../../shared/compile/index.ts';
import { BANDS, youngest, type Band, type Library } from '../../shared/library/index.ts';
import { catalogues, wordsFor } from '../../shared/words/index.ts';
import type { EstimateProps } from '../islands/estimate-view.ts';
import { SHOWS_WORKING } from '../../shared/telling/shows-working.ts';
import { statusWords } from '../../shared/telling/status-words.ts';

/**
 * Which middle and spread a class's answers are told by. England: the mean at year 6; median, range at 11 to 14;
 * quartiles from 14 (national curriculum). Where a word is not yet met the sentence says what it is.
 */
const STATISTICS: Readonly<Record<Band, EstimateProps['statistics']>> = {
  '4-5': 'middle',
  '5-7': 'middle',
  '7-9': 'middle',
  '9-11': 'mean',
  '11-14': 'range',
  '14-16': 'quartiles',
};

const oldest = (bands: readonly Band[]): Band =>
  BANDS.findLast((band) => bands.includes(band)) ?? youngest(bands);

type Cells = EstimateProps['cells'];
const tables = new Map<string, Cells>();

/** What the levers give, kept for a build: lessons ask about the same finds. */
function cellsFor(activity: ActivityOf<'estimate'>, library: Library): Cells {
  if (library.making === null) return [];
  const { of, request, levers } = activity;
  const key = JSON.stringify([of, request, levers]);
  const before = tables.get(key);
  if (before !== undefined) return before;
  const cells = leverTable(library.making.figures, activity);
  tables.set(key, cells);
  return cells;
}

/** The activity's line, made longer where a lever goes beyond it. */
function lineHolding({ line }: ActivityOf<'estimate'>, cells: Cells): EstimateProps['leverLine'] {
  const ends = cells.flatMap((cell) => (cell === null ? [] : [cell[0], cell[2]]));
  return { from: Math.min(line.from, ...ends), to: Math.max(line.to, ...ends) };
}

/** What a page needs for an estimate's island. What the page itself draws (figures, strip) stays out of its props. */
export function estimateScreen(
  lesson: string,
  plan: Plan,
  activity: ActivityOf<'estimate'>,
  library: Library,
): EstimateProps {
  const cells = cellsFor(activity, library);
  return {
    lesson,
    activity: { ...activity, used: [], citations: {}, strip: null, given: [], find: null },
    words: wordsFor(catalogues.en.estimate, youngest(plan.bands)),
    showsWorking: plan.bands.some((each) => SHOWS_WORKING[each]),
    statistics: STATISTICS[oldest(plan.bands)],
    status: statusWords(activity.record.status),
    cells,
    leverLine: lineHolding(activity, cells),
  };
}
