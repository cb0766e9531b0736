import { tellNumber } from '../words/index.ts';

interface Figure {
  readonly low: number | null;
  readonly middle: number;
  readonly high: number | null;
  readonly unit: string;
}

/** Units that are no unit to a reader. */
const BARE = new Set(['ratio', 'exponent', 'log spread', 'count']);

/** A figure with its ends: "13.5 min (12–15)". */
export function spreadOf({ low, middle, high, unit }: Figure): string {
  const value = tellNumber(middle, 3);
  const named = BARE.has(unit) ? value : `${value} ${unit}`;
  return low === null || high === null ? named : `${named} (${tellNumber(low, 3)}–${tellNumber(high, 3)})`;
}
