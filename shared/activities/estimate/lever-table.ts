import { reckonQuantity, type MakingFigures, type MakingRequest } from '../../making/index.ts';
import type { EstimateActivity } from './activity.ts';
import type { LeverCell } from './lever-cell.ts';
import { asAsked } from './line-for-unit.ts';

const threeDigits = (value: number): number => Number(value.toPrecision(3));

/**
 * What the model says for every setting of the levers, the last lever running fastest: so that a page answers at once and
 * carries no model.
 *
 * @example leverTable(figures, activity)[cellAt(activity.levers, places)]
 */
export function leverTable(
  figures: MakingFigures,
  { of, request, levers }: Pick<EstimateActivity, 'of' | 'request' | 'levers'>,
): readonly LeverCell[] {
  if (levers.length === 0) return [];
  const requests = levers.reduce<readonly MakingRequest[]>(
    (before, { options }) => before.flatMap((each) => options.map(({ change }) => ({ ...each, ...change }))),
    [request],
  );
  return requests.map((each): LeverCell => {
    const reckoned = reckonQuantity(figures, of, each);
    // Nothing at all has no place on a line of ratios.
    if (!reckoned.ok || !(reckoned.value.low > 0)) return null;
    const { low, middle, high, unit } = reckoned.value;
    const shown = (amount: number): number => threeDigits(asAsked(amount, unit));
    return [shown(low), shown(middle), shown(high)];
  });
}
