import type { EstimateActivity } from '../../shared/activities/scorers.ts';
import type { EstimateTable } from '../stores/estimate.ts';

/** What was said, on the line and in its unit: a number, or a least and a most; null for a class, and for nothing. */
export function guessOn(
  activity: Pick<EstimateActivity, 'choices' | 'unit'>,
  table: EstimateTable,
): number | readonly [number, number] | null {
  if (table.way === 'class') return null;
  if (table.how === 'number') return table.number;
  if (table.how === 'choose') {
    const chosen = activity.choices.find(({ id }) => id === table.choice);
    return chosen === undefined ? null : chosen.hours * (activity.unit === 'min' ? 60 : 1);
  }
  return table.lower === null || table.upper === null ? null : [table.lower, table.upper];
}
