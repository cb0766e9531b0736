import { lineFor, type Line } from '../../estimating/index.ts';
import type { ReckonedUnit, Reckoning } from '../../making/index.ts';

/** An amount of the model as an estimate asks it: a share in hundredths, all else as it is. */
export const asAsked = (amount: number, unit: ReckonedUnit): number =>
  unit === 'share' ? amount * 100 : amount;

/**
 * The line an answer is asked on. The caller draws by chance on which side of its middle the answer lies.
 *
 * A share ends at 100 whatever the side: there the line begins so low that its middle is at least a halving below the
 * record (judgement).
 */
export function lineForUnit(
  {
    lowerQuarter,
    middle,
    upperQuarter,
    unit,
  }: Pick<Reckoning, 'lowerQuarter' | 'middle' | 'upperQuarter' | 'unit'>,
  side: 'low' | 'high',
): Line {
  const low = asAsked(lowerQuarter, unit);
  const record = { low, middle: asAsked(middle, unit), high: asAsked(upperQuarter, unit) };
  if (unit !== 'share') return lineFor(record, side);
  const line = lineFor(record, 'high');
  return line.to <= 100 ? line : { from: 10 ** Math.floor(Math.log10((low / 2) ** 2 / 100)), to: 100 };
}
